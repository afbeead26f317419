import 'bumpline/define'; // registers the elements
import 'bumpline/react'; // their types in JSX; at run time it is empty
import { useState } from 'react';

export function App() {
  const [drop, setDrop] = useState(30);
  const [change, setChange] = useState<number>();
  return (
    <>
      <button type="button" onClick={() => setDrop(drop + 10)}>
        10 mm lower
      </button>
      <bumpline-lowering
        drop={drop}
        bumpTravel={62}
        units="mm"
        onbumpline-answer={(event) => setChange(event.answer.change.value)}
      />
      <output>{change?.toFixed(2)}</output>
    </>
  );
}
