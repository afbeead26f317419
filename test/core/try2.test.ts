import { test } from 'vitest';
import { METRIC } from '../../core/quantity/units.js';
import { understand } from '../../core/readings/understand.js';
test('x', () => {
  const rows = [['','Reference','','Mittel','Down 20 mm','','Notes'],['Travel (mm)','a','b','','a','b','']];
  const f = [-20,-10,0,10,20,30].map((t,i) => [String(t), ...[1,2].map(k => (-0.01*t + 0.02*((i*k*7)%3)).toFixed(2)), '', ...[1,2].map(k => (-0.016*t + 0.02*((i*k*7)%3)).toFixed(2)), '']);
  const u = understand([...rows, ...f], { quantity: 'camber', units: METRIC, language: 'en' });
  console.log(JSON.stringify({c:u.columns, q:u.questions, s:u.sets, d: u.derived, p:u.problems}, null, 1));
});
