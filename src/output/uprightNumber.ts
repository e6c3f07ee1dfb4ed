/** Numbers that make another number upside down, and a plate is read from all sides: 6, 9, 68, 91 … end in a full stop. */
export const uprightNumber = (value: number): string => {
  const text = String(value);
  return /^[01689]*[69][01689]*$/.test(text) ? `${text}.` : text;
};
