/*
 * The script of a page that holds one element and stands in a frame of somebody else's. It gives the element the options of the address,
 * tells the page around how high it is, and has dialogs open where the reader looks. The build writes it into the page as a plain script
 * (site/partials/frames.ts), so it imports nothing.
 */
{
  type Framed = HTMLElement & { readonly settled: Promise<void> };

  /** How high a frame is at least while a dialog is open in it, px. */
  const DIALOG_PX = 640;
  /** What a dialog has at least, where the reader sees less of the frame, px. */
  const LEAST_SEEN_PX = 320;
  /** Attributes that speak of the page around an element, which is this one. */
  const NO_OPTIONS = ['keep-in-address', 'car-id', 'author-page'];

  const root = document.documentElement;
  const element = document.querySelector<Framed>('[keep-in-address]')!;
  const hasDialog = () => element.shadowRoot?.querySelector('dialog[open]') != null;

  /** A sandboxed frame has no origin, so a server may refuse it modules; a plain script it is never refused. */
  const takePlainScript = ({ target }: Event): void => {
    if (origin !== 'null' || !(target instanceof HTMLScriptElement && target.type === 'module')) return;
    removeEventListener('error', takePlainScript, true);
    document.head.append(Object.assign(document.createElement('script'), { src: '../bumpline-plain.js' }));
  };

  /** What a value is worth the element says, as on any page. */
  const takeOptions = (): void => {
    const { observedAttributes } = customElements.get(element.localName) as unknown as { observedAttributes: string[] };
    const names = observedAttributes.filter((name) => !NO_OPTIONS.includes(name));
    for (const [name, value] of new URLSearchParams(location.search)) {
      // Nothing else becomes an attribute, onclick least of all.
      if (names.includes(name)) element.setAttribute(name, value);
      else console.warn(`Bumpline: the frame’s address has no option “${name}”. It takes ${names.join(', ')}.`);
    }
    root.lang = element.getAttribute('language') || root.lang;
    const theme = element.getAttribute('theme')!;
    // Else it stays unsaid: browsers paint an opaque ground behind a frame whose scheme is not that of the page around.
    if (['light', 'dark'].includes(theme)) root.style.colorScheme = theme;
  };

  let told = 0;
  /** The element has come as far as its place must be kept. */
  let isWhole = false;
  let isHeard = false;

  const tell = (): void => {
    const height = Math.max(Math.ceil(root.getBoundingClientRect().height), hasDialog() ? DIALOG_PX : 0);
    // In a frame that is not shown nothing has a height.
    if (!isWhole || height === told || innerWidth === 0) return;
    told = height;
    parent.postMessage({ type: 'bumpline-height', height, isHeard }, '*');
  };

  const answer = ({ source, data }: MessageEvent): void => {
    if (source !== parent || data?.type !== 'bumpline-height-wanted') return;
    isHeard = true;
    // A bar that comes and goes with the height would change the width, and with it the height.
    root.style.scrollbarWidth = 'none';
    told = 0;
    tell();
  };

  /** Dialogs stand in the part of the frame that the reader sees (components/theme/sheet.styles.ts): its middle may be far away. */
  const look = (): void => {
    const observer = new IntersectionObserver(([seen]) => {
      observer.disconnect();
      if (!seen!.isIntersecting) return;
      const { top, bottom } = seen!.intersectionRect;
      const height = Math.min(innerHeight, Math.max(bottom - top, LEAST_SEEN_PX));
      root.style.setProperty('--_window-top', `${Math.max(0, Math.min(top, innerHeight - height))}px`);
      root.style.setProperty('--_window-height', `${height}px`);
    });
    observer.observe(root);
  };
  /** An open one would move away from under the finger. */
  const lookBefore = (): void => {
    if (!hasDialog()) look();
  };

  const follow = async (): Promise<void> => {
    for (const type of ['pointerover', 'pointerdown', 'focusin', 'keydown', 'click'])
      addEventListener(type, lookBefore, true);
    addEventListener('resize', look);
    addEventListener('message', answer);
    await element.settled;
    isWhole = true;
    // After the frame in which it changed: a height that changes here at once raises "ResizeObserver loop".
    new ResizeObserver(() => setTimeout(tell)).observe(root);
    new MutationObserver(tell).observe(element.shadowRoot!, { subtree: true, attributeFilter: ['open'] });
    tell();
  };

  addEventListener('error', takePlainScript, true);
  void customElements.whenDefined(element.localName).then(() => {
    takeOptions();
    if (parent !== self) void follow();
  });
}
