/*
 * Words that people put over a column beside the name of the parts: averages, passes, directions, units. English first, then the
 * German, French, Italian, Spanish and Dutch ones that a sheet is likely to have. Common practice, no source.
 */

/** One word, or one mark, and nothing else. */
const wordOf = (alternatives: string): RegExp => new RegExp(`^(?:${alternatives})$`, 'iu');

/** The mean of other columns. */
export const AVERAGE = wordOf(
  'averages?|averaged|avgs?|aver|ave|av|means?|median|mittel|mittelwerte?|durchschnitt(?:swert)?|schnitt|mw|moy|moyennes?|moyen|media|medio|promedio|prom|gemiddelden?|gem|medel|medelvärde|snitt|gjennomsnitt|gennemsnit|x̄|x̅|[øØ⌀∅µμ]',
);
/** How far others lie apart, or how many there are. */
export const SPREAD = wordOf(
  'sd|stdevs?|stddevs?|stdev[ps]|dev|devs|deviation|sigma|σ|±|spread|range|scatter|repeatability|min|minimum|max|maximum|count|uncertainty|standardabweichung|stabw|spannweite|streuung|étendue|desviación|deviazione',
);
/** Of a spread, and else of standard parts. */
export const STANDARD = wordOf('std|stand|standard|st|écart|ecart|type');
/** One column less another, or less its own value at one height. */
export const DIFFERENCE = wordOf(
  'diffs?|differences?|delta|Δ|∆|change|gain|vs|versus|net|unterschied|differenz|änderung|différence|variation|differenza|diferencia|verschil',
);

/** A sweep over the heights. */
export const PASS = wordOf(
  'pass|passes|runs?|sweeps?|durchg[aä]nge?|durchl[aä]ufe?|messung|messungen|messreihen?|passages?|passes|essais?|mesures?|relevés?|passata|misura|medida|pasada|meting',
);
/** The same beside a name of parts, or where no parts are named anywhere: each is also a name, as `Serie` is of standard parts. */
export const PASS_TOO = wordOf(
  'series|trials?|tests?|try|attempt|take|round|reps?|repeat|repeated|repeats|repetition|again|rerun|retest|readings?|measurements?|meas|lauf|messwerte?|reihe|versuch|nochmals?|série|serie|prova|set',
);

/** What is read: no part of any name of parts. */
export const ABOUT_VALUES = wordOf(
  'camber|toe|angles?|inclination|bump-?steer|gauge|values?|measured|negative|positive|neg|pos|sturz|sturzwinkel|spur|spurwinkel|winkel|carrossage|pincement|campanatura|convergenza|caída|vlucht',
);
/** Between other words they are kept: they begin or end nothing. */
export const FILLER = wordOf(
  'of|in|at|the|a|an|with|for|and|on|going|moving|goes|travel|travell?ing|direction|way|wheel|no|nr|num|number|mit|bei|der|die|das|avec|de|des|du|la|le|les',
);
export const UNIT = wordOf(
  'mm|cm|in|inch|inches|deg|degs|degrees?|arc|arcmin|arcminutes?|minutes?|millimet(?:re|er)s?|centimet(?:re|er)s?|grad|degrés?|zoll|pouces?|°|º|′|″|"|”|\'|’',
);
/** What stands in brackets beside a unit to say which sign is which. */
export const SIGN_HINT = wordOf(
  'top|in|out|is|min|plus|minus|\\+|-|–|−|=|,|/|;|:|negative|positive|neg|pos|toe|lean|leans',
);

export const GOING_UP = wordOf(
  'up|upwards?|bump|jounce|rising|raising|compression|rauf|hinauf|hoch|aufwärts|einfedern|montée|haut|salita|subida|omhoog|↑|⬆|▲|△',
);
export const GOING_DOWN = wordOf(
  'down|downwards?|droop|rebound|falling|lowering|extension|runter|hinunter|herunter|abwärts|ab|ausfedern|descente|bas|détente|discesa|bajada|omlaag|↓|⬇|▼|▽',
);
export const ARROW = /^[↑⬆▲△↓⬇▼▽]$/u;
/** Words of a finished state are names of parts as often as ways of a wheel. */
export const RAISED = wordOf('raised|lifted|compressed|angehoben|relevée?');
export const LOWERED = wordOf('lowered|extended|dropped|drooped|abgesenkt|abaissée?');
export const DROOP = wordOf('droop|rebound|extension|ausfedern|détente');
export const BUMP = wordOf('bump|jounce|compression|einfedern');

/** First, second, … as they stand in place of a number. */
export const ORDINAL = wordOf(
  'one|two|three|four|five|six|first|second|third|fourth|fifth|sixth|last|eins|zwei|drei|vier|fünf|erste[rs]?|zweite[rs]?|dritte[rs]?|vierte[rs]?|fünfte[rs]?|un|deux|trois|quatre|premi(?:er|ère)|deuxième|seconde|troisième|primo|secondo|terzo|primera|segunda|tercera',
);
export const ROMAN = wordOf('i|ii|iii|iv|v|vi');
/** Letters that count passes. */
export const LETTER = wordOf('[a-h]');
/** Behind a figure. */
export const ORDINAL_END = wordOf('st|nd|rd|th|er|ère|e|ème|de|te|ter|tes');

/** Occasions tell passes of one set apart and never parts. */
export const OCCASION = wordOf(
  'morning|noon|afternoon|evening|night|today|yesterday|(?:mon|tues|wednes|thurs|fri|satur|sun)day|mon|tues?|wed|thurs?|fri|sat|sun|morgens?|vormittags?|mittags?|nachmittags?|abends?|matin|après-midi|soir|am|pm',
);
/** The corner that a column was read on. */
export const CORNER = wordOf(
  'front|rear|left|right|[fr][lr]|[lr][fr]|[lr]h|[lr]hs|[lr]|nearside|offside|vorne?|hinten|links|rechts|avant|arrière|gauche|droite?',
);
