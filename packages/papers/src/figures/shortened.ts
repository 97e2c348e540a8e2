/** A text of at most so many letters; a longer one ends in an ellipsis. */
export const shortened = (text: string, letters: number): string =>
  text.length > letters ? `${text.slice(0, letters - 1)}…` : text;
