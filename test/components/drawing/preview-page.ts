import { html, LitElement, render } from 'lit';
import type { Drawing } from '../../../components/drawing/items.js';
import { layout } from '../../../components/drawing/layout.js';
import { drawingStyles, renderDrawing } from '../../../components/drawing/render.js';
import { strutFrontView, tiltScale } from '../../../components/drawing/strut-front-view.js';
import { theme } from '../../../components/theme/theme.js';
import { allBalloons, allMeasures, exampleDrawing } from './example-drawing.js';
import { exampleStrut, poseAt } from './planar-strut.js';

class PreviewDrawing extends LitElement {
  static override styles = [theme, drawingStyles];
  static override properties = { drawing: {}, width: {} };
  declare drawing: Drawing;
  declare width: number;
  override render() {
    return renderDrawing(layout(this.drawing, this.width), { onSelect: () => {} });
  }
}
customElements.define('preview-drawing', PreviewDrawing);

const steep = { ...exampleStrut, armPivot: [343, 120] as const, camber: 0.6 };
const outboard = poseAt({ ...exampleStrut, armPivot: [343, 250] as const }, 60);
const extra = (theme: string) => [
  exampleDrawing(0, { balloons: [], measures: allMeasures, tieRod: false }),
  exampleDrawing(30, { balloons: [], measures: allMeasures, tieRod: false }),
  exampleDrawing(30, { balloons: [] }),
  strutFrontView(poseAt(steep, 20), { camberText: '+0.72°', tiltScale: tiltScale([0.72]), before: poseAt(steep, 0) }),
  strutFrontView({ ...outboard, instantCentre: [4745, 500] }, { camberText: '−0.40°', balloons: allBalloons }),
  strutFrontView({ ...outboard, instantCentre: [Number.POSITIVE_INFINITY, 0] }, { camberText: theme }),
];
const view = (width: number, name: string) => html`<div
  id="sheet-${name}-${width}"
  style="display:flex;flex-wrap:wrap;gap:8px;background:#888;padding:8px;width:${width > 400 ? 2 * width + 24 : 4 * width + 40}px"
>
  ${[...[-40, 0, 30, 60].map((travel) => exampleDrawing(travel)), ...extra(name)].map(
    (drawing) =>
      html`<preview-drawing theme=${name} .drawing=${drawing} .width=${width} style="width:${width}px"></preview-drawing>`,
  )}
</div>`;
render(html`${['light', 'dark'].map((name) => [290, 330, 560].map((width) => view(width, name)))}`, document.body);
