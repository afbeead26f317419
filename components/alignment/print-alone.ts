import { type CSSResult, render, type TemplateResult } from 'lit';

/** A browser that tells of no end of printing leaves the frame so long, ms. */
const LEFT_MS = 60_000;

/**
 * Prints something on a page of its own, beside the page it stands on: in a frame that goes away afterwards. Nothing of the page is touched.
 *
 * @param title what the browser calls the print
 */
export function printAlone(content: TemplateResult, styles: CSSResult, title: string): void {
  const frame = document.createElement('iframe');
  frame.className = 'bumpline-print';
  frame.tabIndex = -1;
  frame.setAttribute('aria-hidden', 'true');
  Object.assign(frame.style, { position: 'fixed', inlineSize: '0', blockSize: '0', border: '0' });
  document.body.append(frame);
  const { contentWindow, contentDocument } = frame;
  if (!contentWindow || !contentDocument) {
    frame.remove();
    return;
  }
  const sheet = new (contentWindow as Window & typeof globalThis).CSSStyleSheet();
  sheet.replaceSync(styles.cssText);
  contentDocument.adoptedStyleSheets = [sheet];
  contentDocument.title = title;
  contentDocument.documentElement.lang = 'en';
  render(content, contentDocument.body);
  const leave = () => frame.remove();
  contentWindow.addEventListener('afterprint', leave);
  setTimeout(leave, LEFT_MS);
  contentWindow.print();
}
