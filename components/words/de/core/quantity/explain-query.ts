import type { QUERY } from '../../../../../core/quantity/explain-query.js';

const linkAt = (path: string): string => (path.startsWith('tieRod') ? 'die Spurstange' : 'der Querlenker');

/** German words of what looks unusual. */
export const QUERY_DE: typeof QUERY = {
  texts: {
    track: (size) => `die Spurweite wäre ${size}`,
    height: (size) => `Höhe über dem Boden ${size}`,
    'radius-differs': (size) => `Höhe der Radmitte und Reifenradius unter Last unterscheiden sich um ${size}`,
    length: (size, { path }) => `${linkAt(path)} ist ${size} lang`,
    slope: (size, { path, value }) => `${linkAt(path)} ${value < 0 ? 'fällt' : 'steigt'} zum Rad hin um ${size}`,
    'damper-lean': (size, { value }) => `der Dämpfer neigt sich oben um ${size} nach ${value < 0 ? 'außen' : 'innen'}`,
    caster: (size) => `der Nachlauf ist ${size}`,
    kingpin: (size) => `die Spreizung ist ${size}`,
    'scrub-radius': (size) => `der Lenkrollradius ist ${size}`,
  },
  whole: (label, text) =>
    `${label}: ${text}. Das ist bei einem Straßenauto ungewöhnlich. Sieh nach, ob Ziffern vertauscht sind; stimmt es, mach weiter.`,
};
