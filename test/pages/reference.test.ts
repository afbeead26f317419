import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { MANIFEST } from '../../components/manifest/manifest.generated.js';
import type { ElementDeclaration, Field } from '../../components/manifest/manifest.js';
import { theme } from '../../components/theme/theme.js';
import { readPointHeading, type Slot } from '../../core/document/point-columns.js';
import { pointRowKinds, rowKey } from '../../core/document/point-rows.js';
import { METRIC } from '../../core/quantity/units.js';
import { understandSheet } from '../../core/readings/table/understand-sheet.js';
import type { ColumnRole } from '../../core/readings/table/understanding.js';
import { POINT_COLUMNS, READING_COLUMNS } from '../../site/partials/reference/columns.js';
import { references } from '../../site/partials/reference/list.js';
import { exampleOf } from '../../site/partials/reference/page.js';
import { typeId } from '../../site/partials/reference/tables.js';
import { inside, textOf } from './site-source.js';

/*
 * The pages about the elements are made of the manifest: whatever it holds stands on them, and what they say of tables is what their
 * readers do. What the elements themselves do of it: test/components/manifest/.
 */

const top = fileURLToPath(new URL('../../', import.meta.url));
const built = (path: string) => readFileSync(`${top}dist/site/${path}index.html`, 'utf8');
const elements = new Map(
  MANIFEST.modules.flatMap(({ declarations }) => declarations.map((one) => [one.tagName, one] as const)),
);

/** Names in the first column of the tables of a section. */
const named = (section: string): string[] =>
  [...section.matchAll(/<th scope="row">(.*?)<\/th>/g)].map(([, cell]) => textOf(cell!));
const names = (all: readonly { name: string }[] = []) => all.map(({ name }) => name);

describe.each(references)('the page of $tag', ({ tag, path }) => {
  const html = built(path);
  const main = inside(html, 'main');
  const element = elements.get(tag)!;
  const { attributes = [], members, events = [], types } = element;
  const section = (id: string): string =>
    new RegExp(`<section aria-labelledby="${id}">([\\s\\S]*?)</section>`).exec(main)?.[1] ?? '';

  it('has every attribute, with what it takes and does', () => {
    expect(named(section('attributes'))).toEqual(names(attributes));
    for (const { name, minimum, maximum, values = [], default: without, description } of attributes) {
      const row = textOf(inside(main, 'tr', `id="attribute-${name}"`));
      expect(description, name).toMatch(/\S/);
      for (const word of values) expect(row, name).toContain(word);
      if (minimum !== undefined) expect(row, name).toContain(`${minimum} to ${maximum}`.replaceAll('-', '−'));
      if (without !== undefined && without !== 'false')
        expect(row, name).toContain(`${without.replaceAll("'", '')} if left out.`);
    }
  });

  it('has every property, by itself or with its attribute, and says which cannot be set', () => {
    const own = members.filter(({ kind, attribute }) => kind === 'field' && !attribute);
    expect(named(section('properties'))).toEqual(names(own));
    for (const { name, readonly, description } of own) {
      const row = textOf(inside(main, 'tr', `id="property-${name}"`));
      expect(description, name).toMatch(/\S/);
      if (readonly) expect(row, name).toContain('read-only');
      else expect(row, name).not.toContain('read-only');
    }
    for (const { name, fieldName } of attributes.filter((one) => one.fieldName !== one.name))
      expect(textOf(inside(main, 'tr', `id="attribute-${name}"`))).toContain(`Property ${fieldName}.`);
  });

  it('has every event with all that it carries, and every type that is named', () => {
    for (const { name, fields } of events) {
      const from = main.indexOf(`id="event-${name}"`);
      expect(from, name).toBeGreaterThan(0);
      expect(named(inside(main.slice(from), 'table'))).toEqual(names(fields));
    }
    for (const { name, fields } of types) {
      const from = main.indexOf(`id="${typeId(name)}"`);
      expect(named(inside(main.slice(from), 'table')), name).toEqual(names(fields));
    }
    expect(new Set(types.map(({ name }) => typeId(name))).size).toBe(types.length);
  });

  it('has every part, state and custom property', () => {
    const { cssParts, cssStates, cssProperties } = element;
    expect(named(section('style'))).toEqual([...names(cssParts), ...names(cssStates), ...names(cssProperties)]);
  });

  it('shows what it gives to copy, and nothing else', () => {
    const snippet = textOf(inside(inside(main, 'div', 'class="snippet"'), 'code'));
    expect(snippet).toBe(exampleOf(tag));
    // As an author writes it: the build leads every element of the site to the snippet builder.
    const live = inside(main, 'div', 'class="specimen"').replaceAll(/ author-page="[^"]*"/g, '');
    expect(live.trim()).toBe(exampleOf(tag));
  });

  it('leads nowhere in vain, and nothing stands under two ids', () => {
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id!);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    const links = [...html.matchAll(/<a\b[^>]* href="([^"]*)"/g)].map(([, href]) => new URL(href!, `site:/${path}`));
    const dead = links.filter(({ pathname, hash }) => {
      const file = `${top}dist/site${pathname}${pathname.endsWith('/') ? 'index.html' : ''}`;
      return !existsSync(file) || (hash && !readFileSync(file, 'utf8').includes(` id="${hash.slice(1)}"`));
    });
    expect(dead.map(String)).toEqual([]);
    expect(built('put-it-in-your-article/')).toContain(`href="../${path}"`);
    expect(main).toContain('href="../../put-it-in-your-article/"');
  });
});

describe('what the manifest says of values', () => {
  const all = [...elements.values()].flatMap((one: ElementDeclaration) => [
    ...one.types.map((type) => ({ tag: one.tagName, ...type })),
    ...(one.events ?? []).map((event) => ({ tag: one.tagName, ...event })),
  ]);
  const UNIT =
    /\bmm\b|degree|°|radians|\bN\b|\bkg\b|\bg\b|inches|hours|share|index|from 0|how many|chance|ratio|power|square|factor|apart|uncertaint|correlation|unit|deviation|1 where|freedom|passes|correlat/i;
  /** Figures, alone or several; in quotes stand words. */
  const isOfNumbers = ({ type }: Field) =>
    /\bnumber\b|Float64Array|\bDoubted\b/.test(type.text.replace(/'[^']*'/g, ''));

  it('there are comments for every field that is told', () => {
    const bare = all.flatMap(({ tag, name, fields }) =>
      fields.flatMap((field) => (field.description ? [] : `${tag} ${name}.${field.name}`)),
    );
    expect(bare).toEqual([]);
  });

  it('every figure has its unit beside it, or where its type is told', () => {
    const bare = all.flatMap(({ name, description = '', fields }) =>
      fields
        .filter((field) => isOfNumbers(field) && !UNIT.test(`${description} ${field.description}`))
        .map((field) => `${name}.${field.name}: ${field.description}`),
    );
    expect([...new Set(bare)]).toEqual([]);
  });

  it('the custom properties are those that the theme reads, the parts and states those of the sources', () => {
    const { cssProperties, cssParts, cssStates } = elements.get('bumpline-lowering')!;
    const read = new Set([...theme.cssText.matchAll(/var\((--bumpline-[a-z-]+)/g)].map(([, name]) => name!));
    expect(read.size).toBeGreaterThan(10);
    expect(names(cssProperties).sort()).toEqual([...read].sort());
    const files = readdirSync(`${top}components`, { recursive: true, encoding: 'utf8' }).filter(
      (file) => file.endsWith('.ts') && !file.endsWith('.generated.ts'),
    );
    const sources = files.map((file) => readFileSync(`${top}components/${file}`, 'utf8'));
    const parts = sources.flatMap((text) => [...text.matchAll(/ part="([a-z-]+)"/g)].map(([, name]) => name!));
    expect(names(cssParts).sort()).toEqual([...new Set(parts)].sort());
    const [, states] = /export type SheetState = ([^;]+);/.exec(sources.join('\n'))!;
    expect(names(cssStates).sort()).toEqual([...states!.matchAll(/'([a-z]+)'/g)].map(([, name]) => name!).sort());
  });
});

describe('what the pages say of tables', () => {
  it('every row’s name is one that its reader knows', () => {
    for (const { key, names: all } of pointRowKinds()) for (const name of all) expect(rowKey(name), name).toBe(key);
  });

  it.each(Object.entries(POINT_COLUMNS))('a column of points: %s', (slot, { headings }) => {
    for (const heading of headings) expect(readPointHeading(heading, '').slot, heading).toBe(slot as Slot);
  });

  /** A sheet in which a column of that role is the last. */
  const rowsOf = (role: ColumnRole, heading: string): string[][] => {
    const travels = [-20, -10, 0, 10, 20, 30];
    const cells: Partial<Record<ColumnRole, (i: number) => string>> = {
      height: (i) => String(380 - 10 * i),
      value: (i) => String(-0.1 * i),
      pass: (i) => (i < 3 ? 'first' : 'second'),
      going: (i) => (i < 3 ? 'up' : 'down'),
      body: () => '212',
      derived: (i) => String(-0.1 * i),
    };
    const more = cells[role] ?? ((i) => String(10 + i));
    const isHeight = role === 'travel' || role === 'height';
    const angles =
      role === 'dialFront' || role === 'dialRear'
        ? []
        : ['Camber (°)', ...(role === 'derived' ? ['Camber 2 (°)'] : [])];
    return [
      [...(isHeight ? [] : ['Travel (mm)']), ...angles, heading],
      ...travels.map((travel, i) => [
        ...(isHeight ? [] : [String(travel)]),
        ...angles.map(() => String(-0.1 * i)),
        role === 'travel' ? String(travel) : more(i),
      ]),
    ];
  };

  it.each(Object.entries(READING_COLUMNS))('a column of readings: %s', (role, { headings }) => {
    const quantity = role.startsWith('dial') ? 'toe' : 'camber';
    for (const heading of headings) {
      const options = { quantity, units: METRIC, language: 'en' } as const;
      const { columns } = understandSheet(rowsOf(role as ColumnRole, heading), options);
      expect(columns.at(-1)!.role, heading).toBe(role);
    }
  });
});

it('the page of changes tells of the version in package.json, first', () => {
  const { version } = JSON.parse(readFileSync(`${top}package.json`, 'utf8')) as { version: string };
  const [first] = [...built('changes/').matchAll(/<h2 id="([^"]*)">([^<]*)<\/h2>/g)];
  expect(first?.slice(1)).toEqual([`version-${version.replaceAll('.', '-')}`, version]);
});
