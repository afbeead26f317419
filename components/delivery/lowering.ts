import '../bumpline-lowering/bumpline-lowering.define.js';

export { setPlotLoader } from '../shared/chart/chart.js';
