import 'bumpline/define'; // registers the elements
import 'bumpline/react-18'; // their types in JSX; at run time it is empty
import type { BumplineLowering } from 'bumpline';
import { EXAMPLE_CORNER } from 'bumpline/core';
import { useEffect, useRef, useState } from 'react';

export function App() {
  const [drop, setDrop] = useState(30);
  const [change, setChange] = useState<number>();
  const lowering = useRef<BumplineLowering>(null);
  useEffect(() => {
    const element = lowering.current!;
    element.corner = EXAMPLE_CORNER; // a property that is no attribute
    const listening = new AbortController();
    element.addEventListener('bumpline-answer', (event) => setChange(event.answer.change.value), listening);
    return () => listening.abort();
  }, []);
  return (
    <>
      <button type="button" onClick={() => setDrop(drop + 10)}>
        10 mm lower
      </button>
      <bumpline-lowering ref={lowering} drop={drop} bump-travel="62" units="mm" />
      <output>{change?.toFixed(2)}</output>
    </>
  );
}
