/*
 * Makes each frame of Bumpline on this page as high as what it shows. One copy does for all of them, those that come later too:
 *
 *   <script src="https://your-site.example/bumpline-frames.js" async></script>
 *
 * With data-origin="https://bumpline.example/" on the script only frames below that address are heard; without it those whose own
 * address ends in /embed/<name>/. Nothing else is done, kept or sent. A second copy does no harm.
 */
(() => {
  const { origin: told } = (document.currentScript || { dataset: {} }).dataset;
  const below = told && new URL(told, document.baseURI).href.replace(/\/*$/, '/');
  if (told && !/^https?:/.test(told)) {
    console.warn(`Bumpline: data-origin="${told}" names no site: write its whole address, with https: at its start.`);
  }

  const isOurs = ({ src }) =>
    below ? src.startsWith(below) : /^[^?#]*\/embed\/[\w-]+\/(?:index\.html)?(?:[?#]|$)/.test(src);

  const frames = () => Array.from(document.querySelectorAll('iframe')).filter(isOurs);

  /** Every frame that its sandbox gives no origin is called "null", whoever is in it: only its window says which one is speaking. */
  const originOf = (frame) =>
    frame.hasAttribute('sandbox') && !frame.sandbox.contains('allow-same-origin') ? 'null' : new URL(frame.src).origin;

  /** Tells a frame that it is heard, and has it say its height. That is no secret, whoever gets it. */
  const greet = ({ contentWindow }) => contentWindow.postMessage({ type: 'bumpline-height-wanted' }, '*');

  addEventListener('message', ({ source, origin, data }) => {
    const { type, height, isHeard } = data || {};
    if (type !== 'bumpline-height' || typeof height !== 'number' || !(height >= 40 && height <= 20000)) return;
    const frame = frames().find(({ contentWindow }) => contentWindow === source);
    if (!frame || origin !== originOf(frame)) return;
    const border = getComputedStyle(frame).boxSizing === 'border-box' ? frame.offsetHeight - frame.clientHeight : 0;
    frame.style.height = `${Math.ceil(height) + border}px`;
    if (!isHeard) greet(frame);
  });
  frames().forEach(greet);
})();
