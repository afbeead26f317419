import '../define.js';
