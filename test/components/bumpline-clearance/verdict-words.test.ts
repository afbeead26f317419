import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sentence, spoken, VERDICTS } from '../../../components/bumpline-clearance/bumpline-clearance.words.js';
import { drawnWheels, tightest } from '../../../components/bumpline-clearance/drawn-wheels.js';
import { sectionView } from '../../../components/bumpline-clearance/section-view.js';
import { sideView } from '../../../components/bumpline-clearance/side-view.js';
import { chartModel, placesTable } from '../../../components/bumpline-clearance/views.js';
import { textOf } from '../../../components/element/sentence.js';
import type { Verdict } from '../../../core/answers/clearance.js';
import { type ClearanceQuestion, clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import { tried } from '../../../core/answers/from-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import type { TravelLimits } from '../../../core/travel/travel-limits.js';
import { finished } from '../../core/answers/finished.js';

const MM = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const INCH = { units: { length: 'in', angle: 'degrees' }, language: 'en' } as const;
const evenly = (least: number, most: number) =>
  fc.integer({ min: 0, max: 1e5 }).map((share) => least + ((most - least) * share) / 1e5);
/** Colours by what they mean: contact, not enough, and nothing of either. */
const INK: Record<Verdict, string> = { touches: 'contact', close: 'limit', clears: 'ink' };
const CHIP: Record<Verdict, string> = { touches: 'problem', close: 'next', clears: 'yours' };
const WHEEL = { size: '225/45R17', rimWidthInch: 7.5, offset: 40 };

/** Places over the tread and beside it, of every gap from far inside the tyre to far out, however sure, whatever must stay free. */
const cases = fc.record({
  over: fc.boolean(),
  gap: fc.oneof(evenly(-30, 60), evenly(-6, 6)),
  plusMinus: fc.oneof(evenly(0, 20), fc.constantFrom(1, 2, 3, 5)),
  margin: evenly(0, 20),
  allowance: evenly(0, 6),
  stopDoubt: fc.constantFrom(0, 0, 2, 8),
  isSteered: fc.boolean(),
  drop: evenly(0, 30),
});
/** Solved once: what is asked of them differs. */
const solved = (source: AnySource) => tried({ source }).source;
const CORNER = solved({ kind: 'corner', corner: EXAMPLE_CORNER });
const STRAIGHT = solved({ kind: 'coefficients', coefficients: [0], domain: [-80, 120] });

type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;

function answered(
  { over, gap, plusMinus, margin, allowance, stopDoubt, isSteered, drop }: Case,
  limits?: TravelLimits,
) {
  const at = over ? { clock: 12, distance: 317 + 50 + gap, out: -60 } : { clock: 12, distance: 300, out: gap };
  const second = { ...at, clock: 11 };
  const asked = {
    source: isSteered ? CORNER : STRAIGHT,
    ...(isSteered && { lock: 30 }),
    ...(!isSteered && { sideways: 0 }),
    isLeft: true,
    before: WHEEL,
    after: WHEEL,
    places: [at, second].map((where, i) => ({
      name: `place ${i}`,
      fixedTo: 'body' as const,
      is: 'bodywork' as const,
      at: where,
      plusMinus: i === 0 ? plusMinus : 3,
    })),
    limits: limits ?? { stopGap: 30, stopGapPlusMinus: stopDoubt, stopLength: 40, stopUsable: 0.5, motionRatio: 1 },
    marginBodywork: margin,
    allowance,
    drop,
  };
  const question = asked as unknown as ClearanceQuestion;
  const answer = finished(clearanceQuestions.clearanceSteered(question));
  return { answer, asked: question as never, places: asked.places, isLeft: true, lock: isSteered ? 30 : undefined };
}

/** Every number with its ± that stands in a text. */
const stated = (text: string) =>
  [...text.replaceAll('\u202f', ' ').matchAll(/(\d+(?:\.\d+)?) ± (\d+(?:\.\d+)?) (?:mm|in)/g)].map(
    ([, value, doubt]) => ({
      value: Number(value),
      doubt: Number(doubt),
    }),
  );

describe('one verdict everywhere', () => {
  it('is “clears” only with all left at the bad end of the ±, “touches” only with nothing at its good end, else “too close to tell”', () => {
    const seen: Record<Verdict, number> = { clears: 0, close: 0, touches: 0 };
    fc.assert(
      fc.property(cases, (one) => {
        const { answer } = answered(one);
        for (const { verdict, decisive, worst, solid, margin } of answer.places) {
          const needed = margin + answer.allowance;
          seen[verdict!]++;
          for (const { gap, plusMinus } of [worst, solid!]) {
            if (gap - plusMinus < needed) expect(verdict).not.toBe('clears');
            if (gap + plusMinus <= 0) expect(verdict).toBe('touches');
          }
          const { gap, plusMinus } = decisive;
          expect(verdict).toBe(gap - plusMinus >= needed ? 'clears' : gap + plusMinus <= 0 ? 'touches' : 'close');
        }
        const worst = answer.places[answer.worst!]!;
        expect(answer.verdict).toBe(worst.verdict);
        for (const { verdict } of answer.places) {
          if (verdict === 'touches') expect(answer.verdict).toBe('touches');
          if (verdict === 'close') expect(answer.verdict).not.toBe('clears');
        }
      }),
      { seed: 81, numRuns: 150 },
    );
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(20);
  });

  it('is the same in sentence, status, table, chart, both drawings and their colours, with the numbers that made it', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { answer, asked, places, isLeft, lock } = answered(one);
        const told = { answer, isSteering: answer.isSteered, places, isLeft, lock };
        const text = textOf(sentence(told, MM));
        const { worst, verdict } = answer;
        const others = (Object.keys(VERDICTS) as Verdict[]).filter((other) => other !== verdict);
        const WORDS: Record<Verdict, RegExp> = {
          clears: /the tyre clears /,
          close: /too close to tell/,
          touches: /the tyre touches /,
        };
        expect(text).toMatch(WORDS[verdict!]);
        for (const other of others) expect(text).not.toMatch(WORDS[other]);
        // A contact is certain only where that place touches for certain.
        if (!answer.places.some((place) => place.verdict === 'touches')) {
          expect(text).not.toMatch(/It meets|It touches/);
        }
        expect(spoken(told, '', 'a', 'b', MM)).toContain(text);
        // What the sentence states cannot be read as anything but its word.
        for (const display of [MM, INCH]) {
          const shown = textOf(sentence(told, display));
          expect(shown).toMatch(WORDS[verdict!]);
          const [said] = stated(shown);
          if (!said) continue;
          const isInside = /into the place|too much/.test(shown);
          const signed = isInside ? -said.value : said.value;
          if (verdict === 'touches') expect(signed + said.doubt).toBeLessThanOrEqual(1e-9);
          if (verdict === 'clears') expect(signed - said.doubt).toBeGreaterThanOrEqual(-1e-9);
        }
        const drawn = drawnWheels(answer, asked);
        const rows = placesTable({ answer, places, isLeft }, MM).rows;
        const side = sideView(drawn, tightest(drawn, worst!), answer.places[worst!]!.decisive.travel, worst, MM);
        const chips = side.items.filter((item) => item.kind === 'chip');
        answer.places.forEach((place, i) => {
          const word = VERDICTS[place.verdict!];
          expect(rows[i]!.at(-1)).toBe(word);
          expect(Number(rows[i]!.at(-3))).toBeCloseTo(place.decisive.plusMinus, 4);
          const chart = chartModel({ answer, places, isLeft, selected: i }, MM);
          expect(chart.description).toContain(word);
          for (const other of Object.values(VERDICTS))
            if (other !== word) expect(chart.description).not.toContain(other);
          expect(chips[i]).toMatchObject({ state: CHIP[place.verdict!] });
          expect((chips[i] as { label: string }).label).toContain(word);
          const section = sectionView(drawn, i, tightest(drawn, i), place.decisive.travel, MM);
          const dimension = section.items.find((item) => item.kind === 'dimension') as { ink?: string };
          expect(dimension.ink).toBe(INK[place.verdict!]);
        });
      }),
      { seed: 82, numRuns: 120 },
    );
  });

  it('is none anywhere while nobody has said where the suspension is solid', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { answer, asked, places, isLeft, lock } = answered(one, { motionRatio: 1 });
        const told = { answer, isSteering: answer.isSteered, places, isLeft, lock };
        expect(answer.verdict).toBeUndefined();
        expect(answer.justClear).toBeUndefined();
        const drawn = drawnWheels(answer, asked);
        const texts = [
          textOf(sentence(told, MM)),
          ...placesTable({ answer, places, isLeft }, MM).rows.map((row) => String(row.at(-1))),
          chartModel({ answer, places, isLeft, selected: 0 }, MM).description,
          ...sideView(drawn, tightest(drawn, 0), 0, 0, MM).items.flatMap((item) =>
            item.kind === 'chip' ? [item.label ?? ''] : [],
          ),
        ];
        for (const text of texts)
          expect(text).not.toMatch(/clears by the numbers|too close to tell|the tyre touches the/);
        for (const travel of [0, 40, 80]) {
          const dimension = sectionView(drawn, 0, tightest(drawn, 0), travel, MM).items.find(
            (item) => item.kind === 'dimension',
          );
          expect(dimension).toMatchObject({ ink: 'ink' });
        }
      }),
      { seed: 83, numRuns: 30 },
    );
  });

  it('of 1 ± 3 mm in the tyre is too close to tell, and of 0 ± 0 mm contact', () => {
    const at = (gap: number, plusMinus: number, allowance = 3) =>
      answered({ over: true, gap, plusMinus, margin: 10, allowance, stopDoubt: 0, isSteered: false, drop: 20 }).answer
        .places[0]!;
    const offset = at(0, 1).worst.gap;
    expect(at(-1 - offset, 3).verdict).toBe('close');
    expect(at(-3.01 - offset, 3).verdict).toBe('touches');
    // Over the tread a motion that only a curve tells leaves some hundredths in doubt.
    const none = at(-offset, 0).worst;
    expect(none.plusMinus).toBeLessThan(0.1);
    expect(at(-offset - none.plusMinus - 1e-3, 0).verdict).toBe('touches');
    expect(at(0.5 - offset, 0).verdict).toBe('close');
  });
});
