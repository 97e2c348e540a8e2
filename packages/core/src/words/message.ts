/** A sentence or a word of the program in English, as it stands in the source; catalogues are kept by it. */
export type Message = string & { readonly __message: true };

/** What is put into the braces of a message. A number that needs fixed digits is handed in as text, from `fixed`. */
export type MessageValues = Readonly<Record<string, string | number>>;

/**
 * Marks text that is a message although it is said elsewhere: a label in a table of labels, a reason in a list of rules.
 * It gives back what it is given.
 *
 * @example message('not measured')  // = not measured
 */
export const message = <const Text extends string>(text: Text): Text & Message => text as Text & Message;

/**
 * A literal or a marked message, and no other text: whatever a user typed, or a sentence that was put together, would be
 * in no catalogue.
 */
export type Sayable<Text extends string> = string extends Text ? Message : Text;
