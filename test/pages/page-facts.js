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

  const SHAPES = 'path, line, polyline, polygon, rect, circle, ellipse';
  /** How much of a stroke counts as under a text: a hairline's end that touches a letter's foot does not. */
  const LEAST_PX = 3;
  const FAINT_PX = 0.6;
  const isPaint = (paint) => paint !== 'none' && !/^rgba\(.*, 0\)$/.test(paint);

  /** Whether a point of the window is cut off from a shape by a clip path above it. */
  function isClipped(shape, x, y) {
    for (let node = shape; node && node.localName !== 'svg'; node = node.parentElement) {
      const id = /url\("?#(.+?)"?\)/.exec(getComputedStyle(node).clipPath)?.[1];
      const clip = id && node.getRootNode().getElementById(id)?.firstElementChild;
      if (!clip) continue;
      const at = new DOMPoint(x, y).matrixTransform(node.getScreenCTM().inverse());
      if (!clip.isPointInFill(at)) return true;
    }
    return false;
  }

  /** How opaque what is drawn of an element is, with all that it lies in. */
  function opacityOf(element) {
    let opacity = 1;
    for (let node = element; node && node.localName !== 'svg'; node = node.parentElement)
      opacity *= Number(getComputedStyle(node).opacity);
    return opacity;
  }

  /** Lines, marks and hatching of a picture, in the order in which they are painted. */
  function shapesOf(picture) {
    return [...picture.querySelectorAll(`${SHAPES}, text`)]
      .map((shape, order) => ({ shape, order }))
      .filter(({ shape }) => !shape.closest('defs, clipPath, mask, pattern, marker, symbol'))
      .filter(({ shape }) => shape.checkVisibility({ visibilityProperty: true }))
      .map(({ shape, order }) => {
        const { stroke, strokeWidth, strokeOpacity, fill, fillOpacity } = getComputedStyle(shape);
        const opacity = opacityOf(shape);
        const { a, b } = shape.getScreenCTM();
        const wide = isPaint(stroke) && strokeOpacity * opacity > 0.05 ? parseFloat(strokeWidth) : 0;
        const around = (wide * Math.hypot(a, b)) / 2;
        const box = shape.getBoundingClientRect();
        return {
          shape,
          order,
          isStroked: wide > FAINT_PX,
          // Large grounds bear a text, a mark does not; a thinner stroke than that is the paper's own grid.
          isMark: isPaint(fill) && fillOpacity * opacity > 0.5 && Math.max(box.width, box.height) < 24,
          hides: isPaint(fill) && fillOpacity * opacity >= 0.99,
          toShape: shape.getScreenCTM().inverse(),
          left: box.left - around,
          right: box.right + around,
          top: box.top - around,
          bottom: box.bottom + around,
        };
      });
  }

  /** The line over a chart that shows where it is read: an element of its own, over the picture. */
  function cursorsOver(picture) {
    const lines = picture.closest('.chart-box')?.querySelectorAll('.chart-line, .chart-dot') ?? [];
    return [...lines]
      .filter((line) => line.checkVisibility({ visibilityProperty: true }))
      .map((line) => {
        const { left, right, top, bottom } = line.getBoundingClientRect();
        return { line, left, right, top, bottom, isUnder: Number(getComputedStyle(line).zIndex) < 0 };
      });
  }

  /**
   * Texts of pictures that stand on a line, a mark or hatching, unless a plate of their own hides what is behind: one that is painted
   * between the two, without a hole. A halo around the letters is no plate.
   */
  function textOnStrokes() {
    const wrong = [];
    for (const picture of everything()) {
      if (picture.localName !== 'svg' || !isVisible(picture) || picture.getScreenCTM() === null) continue;
      const parts = shapesOf(picture);
      const cursors = cursorsOver(picture);
      for (const text of parts) {
        if (text.shape.localName !== 'text' || !isVisible(text.shape) || !text.shape.textContent.trim()) continue;
        const on = new Set([...cursorsUnder(text, cursors, parts), ...strokesUnder(text, parts)]);
        for (const one of on) wrong.push(`"${text.shape.textContent.replace(/\s+/g, ' ').trim()}" on ${one}`);
      }
    }
    return wrong;
  }

  /** What of a text's ink lies in a box. */
  function inkIn(ink, box) {
    const left = Math.max(ink.left + SLACK_PX, box.left);
    const right = Math.min(ink.right - SLACK_PX, box.right);
    const top = Math.max(ink.top + SLACK_PX, box.top);
    const bottom = Math.min(ink.bottom - SLACK_PX, box.bottom);
    return right > left && bottom > top ? { left, right, top, bottom } : undefined;
  }

  /** Whether what lies that deep in the picture is hidden from a text, at a point of the window. */
  const isHidden = (parts, text, depth, x, y) =>
    parts.some(
      ({ order, hides, shape, toShape }) =>
        hides &&
        shape.localName !== 'text' &&
        order > depth &&
        order < text.order &&
        shape.isPointInFill(new DOMPoint(x, y).matrixTransform(toShape)) &&
        !isClipped(shape, x, y),
    );

  function cursorsUnder(text, cursors, parts) {
    const ink = inkOf(text.shape);
    return cursors
      .filter(({ isUnder, ...box }) => {
        const both = inkIn(ink, box);
        if (!both) return false;
        const corners = [both.left, both.right].flatMap((x) => [both.top, both.bottom].map((y) => [x, y]));
        return !isUnder || !corners.every(([x, y]) => isHidden(parts, text, -1, x, y));
      })
      .map(({ line }) => `<${line.className}>`);
  }

  function strokesUnder(text, parts) {
    const ink = inkOf(text.shape);
    return parts.filter((part) => isUnder(text, ink, part, parts)).map(({ shape }) => describeShape(shape));
  }

  function isUnder(text, ink, part, parts) {
    const { shape, order, isStroked, isMark, toShape } = part;
    if (shape.localName === 'text' || !(isStroked || isMark)) return false;
    const both = inkIn(ink, part);
    // Within a filled circle of its own it is a number on a balloon.
    if (!both || (isMark && part.left <= ink.left && part.right >= ink.right && part.top <= ink.top)) return false;
    let hits = 0;
    for (let y = both.top + 0.25; y < both.bottom; y += 0.75) {
      for (let x = both.left + 0.25; x < both.right; x += 0.75) {
        const at = new DOMPoint(x, y).matrixTransform(toShape);
        if (!(isStroked && shape.isPointInStroke(at)) && !(isMark && shape.isPointInFill(at))) continue;
        if (isClipped(shape, x, y) || isHidden(parts, text, order, x, y)) continue;
        if (++hits >= LEAST_PX) return true;
      }
    }
    return false;
  }

  const describeShape = (shape) => {
    const name = shape.getAttribute('class') ?? shape.closest('[class]')?.getAttribute('class') ?? '';
    return `<${shape.localName} class="${name.trim()}">`;
  };

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
      // In a closed fold none is drawn.
      return chart?.checkVisibility() && !chart.querySelector('svg, canvas');
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

  window.pageFacts = {
    overflow,
    textOverlaps,
    textOnStrokes,
    smallTargets,
    textFieldsInView,
    nameless,
    besideOthers,
    settled,
    links,
  };
})();
