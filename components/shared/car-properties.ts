/** Reactive properties of every element that reads and writes a car. */
export const carProperties = {
  car: { attribute: false },
  carId: { attribute: 'car-id' },
  keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
};
