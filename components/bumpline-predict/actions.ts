import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, hasMeasured, isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { firstMissingPoint } from '../bumpline-geometry/geometry-kit.js';
import { DRIVEWAY_SHEETS } from '../inputs/driveway-sheets.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-predict.labels.js';
import type { PredictView } from './predict-view.js';

/** The first of the six that nobody measured; kingpin inclination counts in the lean's place. */
function firstMissingMeasure(car: CarDocument): SheetSpec | undefined {
  const { measures = {} } = car.given;
  return DRIVEWAY_SHEETS.find(
    ({ key, optional, read }) => !optional && !read(car) && !(key === 'damperLean' && measures.kingpin),
  );
}

/** The ways in: readings first, then links, then what is missing of them, each step named once the one before is done. */
export function renderOwnActions(
  { car, learnt: { needs, isExample } }: PredictView,
  onPaste: () => void,
  onShow: (key: string) => void,
): TemplateResult {
  const isRead = !isExample && !needs.includes('readings');
  const hasLinks = !isExample && !needs.includes('links');
  const paste = html`<button type="button" class="button paste ${isRead ? '' : 'main'}" @click=${onPaste}>${isRead ? NAMES.pasteMore : NAMES.paste}</button>`;
  const button = (kind: string, label: string, key: string, isMain: boolean) =>
    html`<button type="button" class="button own ${kind} ${isMain ? 'main' : ''}" @click=${() => onShow(key)}>${label}</button>`;
  if (!hasLinks) {
    return html`${paste} ${button('tape', NAMES.tape, 'armLength', isRead)} ${button('points', NAMES.points, 'lowerArm.front', false)}`;
  }
  if (isWishbone(car) || !isUsers(car, 'corner')) return paste;
  const isMeasured = car.by === 'driveway' && hasMeasured(car.given);
  const next = isMeasured ? firstMissingMeasure(car) : firstMissingPoint(car);
  const first = isMeasured ? 'armLength' : 'lowerArm.front';
  const own = button(
    'own',
    next ? NAMES.next_(next.title) : NAMES.edit,
    next?.key ?? first,
    isRead && next !== undefined,
  );
  return html`${paste} ${own ?? nothing}`;
}
