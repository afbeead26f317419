/** English words that first answers share. */
export const SHARED = {
  thePages: 'the page’s',
  theExamples: 'the example’s',
  example: 'Example',
  exampleNot: 'Example, not {car}',
  yourCar: 'your car',
  pagesCar: 'the car of this page',
  unread: 'this page’s data cannot be read',
  slow: 'Drawing, chart and fields are still on their way …',
  lost: 'Drawing, chart and fields could not be fetched. They are tried again when the connection is back; if that does not help, reload the page.',
  undrawn: 'A part of this could not be drawn. That is our fault; your numbers are kept.',
} as const;
