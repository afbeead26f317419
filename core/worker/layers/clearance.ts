/** Wheels in their arches. */
export { clearanceQuestions as questions } from '../../answers/clearance-questions.js';
