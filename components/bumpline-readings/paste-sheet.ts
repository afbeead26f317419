import { html } from 'lit';
export class PasteSheet {
  constructor(_app: unknown) {}
  open(_text?: string) {}
  render() {
    return html``;
  }
}
