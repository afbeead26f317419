import { html, nothing, type TemplateResult } from 'lit';
import { type Prediction, withoutPrediction, withPrediction } from '../../core/document/predictions.js';
import { withSetupAt } from '../../core/document/setup-edits.js';
import { formatNumber } from '../../core/quantity/format.js';
import { copyText } from '../controls/clipboard.js';
import { saveFile } from '../controls/save-file.js';
import { dateText, today } from '../element/day.js';
import { isOld } from '../element/says.js';
import { show } from '../element/sentence.js';
import type { Agreement } from './agreed.js';
import { NAMES } from './bumpline-predict.labels.js';
import { fromText, lengthText } from './bumpline-predict.words.js';
import { heightName } from './chart.js';
import type { Agreed, PredictOnSheet, PredictView } from './predict-view.js';
import { keptText, recordCsv, recordJson } from './record-text.js';

const { record: WORDS } = NAMES;

/** A prediction kept, and what was read of it later. */
export function renderRecord(
  view: PredictView,
  answer: PredictOnSheet,
  agreement: Agreement,
  onPaste: () => void,
): TemplateResult | typeof nothing {
  const { set } = answer;
  // Of a car that nobody measured nothing will be read.
  if (!set || view.learnt.isExample) return nothing;
  const { kept, found } = agreement;
  const isRead = set.setup.readings.length > 0;
  return html`<section class="record" aria-label=${WORDS.title}>
    <p class="section-title"><b>${WORDS.title}</b></p>
    ${kept ? html`<p class="kept">${WORDS.kept(dateText(kept.made, view.display), kept.version, keptText(kept, view.display))}</p>` : html`<p class="note">${isRead ? WORDS.notBefore : WORDS.why}</p>`}
    ${isRead ? renderAgreement(view, agreement) : nothing}
    <div class="actions">
      ${kept || isRead ? nothing : html`<button type="button" class="button keep" ?disabled=${isOld(view)} @click=${() => keep(view, answer, agreement)}>${WORDS.keep}</button>`}
      ${!isRead ? html`<button type="button" class="button paste-fitted" @click=${onPaste}>${WORDS.paste}</button>` : nothing}
      ${kept ? renderOut(view, kept, found) : nothing}
    </div>
  </section>`;
}

function keep(view: PredictView, answer: PredictOnSheet, agreement: Agreement): void {
  const prediction = agreement.predictionOf(answer, answer.set!.setup, today());
  view.change('predictions', WORDS.keepStep, (car) => withPrediction(car, prediction));
  view.endStep();
}

/** What the readings with the parts on say of it, in words and as numbers. */
function renderAgreement(view: PredictView, agreement: Agreement): TemplateResult | typeof nothing {
  const { display } = view;
  const { found } = agreement;
  if (!found) return agreement.isComing ? html`<p class="note">${WORDS.comparing}</p>` : nothing;
  const { change, prediction, inside, readings, chiSquare, dof, chance, fitsFrom } = found;
  const { language } = display;
  const angle = (value: number, plusMinus: number | undefined) =>
    show(value, prediction.quantity === 'toe' ? 'toe' : 'camberChange', display, plusMinus);
  const number = (figure: number, decimals: number) => formatNumber(figure, decimals, language);
  const isClose = change && Math.abs(change.difference.value) <= (change.difference.plusMinus ?? 0);
  const text =
    change &&
    (isClose ? WORDS.agrees : WORDS.differs)(
      angle(change.measured.value, change.measured.plusMinus),
      angle(change.predicted.value, change.predicted.plusMinus),
      angle(change.difference.value, change.difference.plusMinus),
    );
  const isPart = change && Math.abs(change.over - prediction.over) > 0.5;
  return html`<p class="agreement ${isClose ? 'agrees' : 'differs'}">${text ?? nothing}
      ${isPart ? WORDS.over(lengthText(change.over, display) + fromText(change.over), heightName(change.from, display)) : nothing}
      ${WORDS.inside(String(inside), String(readings))} ${isClose === false && fitsFrom === undefined ? WORDS.likely : nothing}</p>
    ${fitsFrom === undefined ? nothing : renderOtherZero(view, fitsFrom)}
    <p class="note">${WORDS.chi(number(chiSquare, 1), String(dof), `${number(100 * chance, chance < 0.1 ? 1 : 0)}\u202f%`)}</p>`;
}

/** Heights that seem to be counted from another height than was said. */
function renderOtherZero(view: PredictView, zeroAt: number): TemplateResult {
  const { display, answer } = view;
  const count = () => {
    const index = answer?.set?.index;
    if (index === undefined) return;
    view.change('setups', WORDS.zeroStep, (car) =>
      withSetupAt(car, index, ({ zeroAt: _, ...setup }) => (zeroAt === 0 ? setup : { ...setup, zeroAt })),
    );
    view.endStep();
  };
  const from = heightName(zeroAt, display);
  return html`<p class="other-zero">${WORDS.otherZero(from)}
    <button type="button" class="button count-from" @click=${count}>${WORDS.countFrom(from)}</button></p>`;
}

/** The ways to take a record along, and to be rid of it. */
function renderOut(view: PredictView, kept: Prediction, found: Agreed | undefined): TemplateResult {
  const { announcer } = view;
  const save = () => {
    try {
      saveFile(new Blob([recordJson(kept, found)], { type: 'application/json' }), WORDS.fileName);
      announcer.announce(WORDS.saved);
    } catch (error) {
      console.warn('Bumpline: the file could not be saved.', error);
      announcer.announce(WORDS.notSaved);
    }
  };
  const copy = async (event: Event) => {
    const field = (event.currentTarget as Element).parentElement!.querySelector<HTMLTextAreaElement>('.record-text')!;
    announcer.announce(await copyText(recordCsv(kept, found), field));
  };
  const remove = () => {
    view.change('predictions', WORDS.removeStep, (car) => withoutPrediction(car, kept));
    view.endStep();
  };
  return html`<button type="button" class="button save-record" @click=${save}>${WORDS.save}</button>
    <button type="button" class="button copy-record" @click=${(event: Event) => void copy(event)}>${WORDS.copy}</button>
    <button type="button" class="text-button remove-record" @click=${remove}>${WORDS.remove}</button>
    <textarea class="record-text" hidden readonly rows="6" aria-label=${WORDS.text}></textarea>`;
}
