import { frameSnippetOf, framesScript } from '../../components/publish/frame-snippet.js';
import { attributesText } from '../../components/publish/markup-text.js';
import {
  divSnippetOf,
  type FallbackSentence,
  jsonSnippetOf,
  type Snippet,
  type SnippetWish,
  snippetOf,
  tablesOf,
} from '../../components/publish/snippet.js';
import type { CarDocument } from '../../core/document/car.js';
import { type Choices, siteIn, widthIn } from './choices.js';

/** What the page knows besides the choices. */
export interface Known {
  car: CarDocument;
  /** What the preview says, once it says it. */
  sentence?: FallbackSentence | undefined;
  /** That the preview takes, px. */
  height?: number | undefined;
  /** What the frame is called. */
  title: string;
  /** The site's own address. */
  site: string;
  /** Where the file is taken to lie until the author says where. */
  unknownSite: string;
  integrity: string | undefined;
  framesIntegrity: string | undefined;
  stylesIntegrity: string | undefined;
}

const FILE = 'bumpline-standalone.js';
const STYLES = 'bumpline.css';
/** A frame opens as high as this until its script has given it its height, px. */
const FRAME_PX = 900;

/** What of the choices the tag itself says. */
function wishOf(
  { tag, show, units, angles, theme, language, width, options }: Choices,
  { car, sentence }: Known,
): SnippetWish {
  const px = widthIn(width);
  return {
    tag,
    car,
    attributes: options,
    units,
    angles,
    ...(show && { show }),
    ...(theme && { theme }),
    ...(language && { spoken: language }),
    ...(px !== undefined && { width: px }),
    ...(sentence && { sentence }),
  };
}

/** The lines that keep the place of the elements and fetch them, once a page. */
export function headLines(site: string, { stylesIntegrity, integrity }: Pick<Known, 'stylesIntegrity' | 'integrity'>) {
  const checked = (hash: string | undefined) => ({ ...(hash && { integrity: hash }), crossorigin: 'anonymous' });
  const styles = attributesText({ rel: 'stylesheet', href: site + STYLES, ...checked(stylesIntegrity) });
  const script = attributesText({ type: 'module', src: site + FILE, ...checked(integrity) });
  return `<link${styles}>\n<script${script}></script>`;
}

/** What the author copies, in the form that they chose. */
export function madeOf(choices: Choices, known: Known): Snippet {
  const { form, at } = choices;
  const wish = wishOf(choices, known);
  if (form === 'table') return tablesOf(wish);
  if (form === 'json') return jsonSnippetOf(wish);
  if (form === 'frame') return framed(choices, known);
  const snippet = form === 'div' ? divSnippetOf(wish) : snippetOf(wish);
  return { ...snippet, html: `${headLines(siteIn(at) ?? known.unknownSite, known)}\n${snippet.html}` };
}

function framed(choices: Choices, known: Known): Snippet {
  const { tag, at, units, angles, theme, language, show, options } = choices;
  const { car, title, height = FRAME_PX, framesIntegrity } = known;
  const site = siteIn(at) ?? known.site;
  const attributes = {
    ...options,
    ...(show && { show: ['sentence', ...show].join(' ') }),
    ...(units === 'in' && { units }),
    ...(angles === 'arcminutes' && { angles }),
    ...(theme && { theme }),
    ...(language && { language }),
  };
  const frame = frameSnippetOf({ tag, car, attributes, site, title, height });
  return { ...frame, html: `${frame.html}\n${framesScript(site, framesIntegrity)}` };
}

/** What a preview shows: the same without the line that fetches elements. */
export const shownOf = (choices: Choices, known: Known): string => {
  const wish = wishOf(choices, known);
  return choices.form === 'div' ? divSnippetOf(wish).html : snippetOf(wish).html;
};
