/*
 * What can be measured of a page's layout, from inside it, shadow roots included. Loaded into each page by layout.test.ts; leaves
 * `window.pageFacts`, whose functions each give a list of what is wrong.
 */
(() => {
  const TARGET_PX = 44;
  const SLACK_PX = 0.5;

  function* everything(root = document) {
    for (const element of root.querySelectorAll('*')) {
      yield element;
      if (element.shadowRoot) yield* everything(element.shadowRoot);
    }
  }

  const parentOf = (node) => node.assignedSlot ?? node.parentElement ?? node.getRootNode().host ?? null;

  function hasAncestor(element, holds) {
    for (let node = element; node; node = parentOf(node)) if (holds(node)) return true;
    return false;
  }

  function isVisible(element) {
    const { width, height } = element.getBoundingClientRect();
    if (width <= 1 || height <= 1) return false;
    return element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  }

  const describe = (element) => {
    const text = (element.getAttribute('aria-label') ?? element.textContent ?? '').replace(/\s+/g, ' ').trim();
    return `<${element.localName}${element.className?.baseVal ?? (element.className ? ` class="${element.className}"` : '')}> ${text.slice(0, 50)}`;
  };

  const deepElementFromPoint = (x, y) => {
    let found = document.elementFromPoint(x, y);
    while (found?.shadowRoot) {
      const inner = found.shadowRoot.elementFromPoint(x, y);
      if (!inner || inner === found) break;
      found = inner;
    }
    return found;
  };

  /** Where the page scrolls sideways, what sticks out. */
  function overflow() {
    const wide = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= wide) return [];
    const out = [...everything()].filter(
      (element) => isVisible(element) && element.getBoundingClientRect().right > wide + 1,
    );
    return [`${document.documentElement.scrollWidth} px wide in ${wide}`, ...out.slice(-5).map(describe)];
  }

  const pen = document.createElement('canvas').getContext('2d');

  /** Where a text has ink: its box is as high as the font's tallest letters, which may be none of its own. */
  function inkOf(text) {
    const { left, right, top, bottom } = text.getBoundingClientRect();
    const { fontStyle, fontWeight, fontSize, fontFamily } = getComputedStyle(text);
    pen.font = `${fontStyle} ${fontWeight} ${fontSize} ${fontFamily}`;
    const ink = pen.measureText(text.textContent);
    const scale = (bottom - top) / (ink.fontBoundingBoxAscent + ink.fontBoundingBoxDescent);
    // Turned text or several lines: then the whole box counts.
    if (text.childElementCount > 0 || /rotate/.test(text.getAttribute('transform') ?? ''))
      return { left, right, top, bottom };
    const baseline = bottom - ink.fontBoundingBoxDescent * scale;
    return {
      left,
      right,
      top: baseline - ink.actualBoundingBoxAscent * scale,
      bottom: baseline + ink.actualBoundingBoxDescent * scale,
    };
  }

  function textOverlaps() {
    const wrong = [];
    for (const svg of everything()) {
      if (svg.localName !== 'svg' || !isVisible(svg)) continue;
      const texts = [...svg.querySelectorAll('text')].filter(isVisible);
      const boxes = texts.map(inkOf);
      for (let i = 0; i < boxes.length; i++) {
        for (let j = i + 1; j < boxes.length; j++) {
          const [a, b] = [boxes[i], boxes[j]];
          const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          if (wide > SLACK_PX && high > SLACK_PX) wrong.push(`"${texts[i].textContent}" and "${texts[j].textContent}"`);
        }
      }
    }
    return wrong;
  }

  const INTERACTIVE =
    'a[href], button, input, select, textarea, summary, [role="button"], [role="slider"], [role="link"], [role="tab"], [tabindex="0"]';

  /** WCAG 2.2, 2.5.8: a target in a sentence or held by the line height of text that is no target. */
  function isInline(element) {
    return element.localName === 'a' && getComputedStyle(element).display === 'inline' && isInText(element);
  }
  function isInText(element) {
    const around = element.parentElement?.textContent?.trim() ?? '';
    return around.length > (element.textContent?.trim() ?? '').length;
  }

  /** What a finger hits, which may be more than the box: a label, a pseudo-element, a transparent part of a drawing. */
  function reach(element) {
    element.scrollIntoView({ block: 'center', inline: 'center' });
    const { left, top, width, height } = element.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    const labels = [...(element.labels ?? [])];
    const isIt = (node) => node !== null && hasAncestor(node, (one) => one === element || labels.includes(one));
    const far = (dx, dy) => {
      let steps = 0;
      while (steps < TARGET_PX / 2 && isIt(deepElementFromPoint(x + dx * (steps + 0.5), y + dy * (steps + 0.5))))
        steps++;
      return steps;
    };
    return { width: Math.max(width, far(-1, 0) + far(1, 0)), height: Math.max(height, far(0, -1) + far(0, 1)) };
  }

  function smallTargets() {
    const wrong = [];
    for (const element of everything()) {
      if (!element.matches(INTERACTIVE) || element.disabled || !isVisible(element) || isInline(element)) continue;
      if (hasAncestor(element, (one) => one.getAttribute?.('aria-hidden') === 'true')) continue;
      let { width, height } = element.getBoundingClientRect();
      if (width < TARGET_PX - 0.5 || height < TARGET_PX - 0.5) ({ width, height } = reach(element));
      if (width < TARGET_PX - 0.5 || height < TARGET_PX - 0.5) {
        wrong.push(`${describe(element)}: ${width.toFixed(1)} × ${height.toFixed(1)}`);
      }
    }
    scrollTo(0, 0);
    return wrong;
  }

  const TYPED =
    'textarea, [contenteditable="true"], input:not([type]), input:is([type="text"], [type="number"], [type="search"], [type="email"])';

  function textFieldsInView() {
    const inView = (element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return bottom > 0 && top < innerHeight;
    };
    return [...everything()].filter((one) => one.matches(TYPED) && isVisible(one) && inView(one)).map(describe);
  }

  /** Parts of a sheet that do not stand under one another over its whole width: head, sentence, caution, body. */
  function besideOthers() {
    const out = [];
    for (const sheet of everything()) {
      if (!sheet.matches('article.sheet') || !isVisible(sheet)) continue;
      const parts = [...sheet.children].filter(isVisible);
      for (const [i, part] of parts.entries()) {
        const above = parts[i - 1];
        if (above && part.getBoundingClientRect().top < above.getBoundingClientRect().bottom - 1)
          out.push(describe(part));
      }
    }
    return out;
  }

  /** Images that nobody has given a name, and that are not said to be decoration either. */
  function nameless() {
    const isNamed = (element) =>
      Boolean(
        element.getAttribute('aria-label')?.trim() ||
          element.getAttribute('aria-labelledby') ||
          (element.localName === 'svg' && element.querySelector(':scope > title')?.textContent?.trim()),
      );
    const isHidden = (element) =>
      hasAncestor(
        element,
        (one) => one.getAttribute?.('aria-hidden') === 'true' || one.getAttribute?.('role') === 'presentation',
      );
    // A picture in a named button or figure belongs to that name.
    const isPartOfNamed = (element) =>
      hasAncestor(parentOf(element), (one) => one.matches?.('button, [role="img"]') && isNamed(one));
    const wrong = [];
    for (const element of everything()) {
      const { localName } = element;
      if (!['img', 'svg', 'canvas'].includes(localName) || !isVisible(element) || isHidden(element)) continue;
      if (localName === 'img' ? element.hasAttribute('alt') : isNamed(element) || isPartOfNamed(element)) continue;
      wrong.push(describe(element));
    }
    return wrong;
  }

  /** Every element has its answer and its chart. */
  async function settled() {
    const ours = [...everything()].filter(({ localName }) => localName.startsWith('bumpline-'));
    for (const element of ours) {
      await customElements.whenDefined(element.localName);
      await element.settled;
    }
    await document.fonts.ready;
    const frame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    const end = performance.now() + 5000;
    const waits = (element) => {
      const chart = element.shadowRoot?.querySelector('.chart');
      return chart && !chart.hidden && !chart.querySelector('svg, canvas');
    };
    // Charts come when they are near the viewport: go past each of them.
    for (const element of ours.filter(waits)) {
      element.shadowRoot.querySelector('.chart').scrollIntoView();
      while (waits(element)) {
        if (performance.now() > end) throw new Error('The chart did not come.');
        await frame();
      }
    }
    scrollTo(0, 0);
    await frame();
    return ours.length;
  }

  const links = () =>
    [...everything()]
      .filter((one) => one.matches('a[href]'))
      .map((one) => new URL(one.getAttribute('href'), document.baseURI).href);

  window.pageFacts = { overflow, textOverlaps, smallTargets, textFieldsInView, nameless, besideOthers, settled, links };
})();
