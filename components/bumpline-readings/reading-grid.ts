import { html } from 'lit';
export class ReadingGrid {
  constructor(_app: unknown) {}
  render() {
    return html`<p>grid</p>`;
  }
}
