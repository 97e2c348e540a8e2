import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { messagesOf, namesIn, wrongTranslation } from './check-words.ts';

function programOf(text: string): ts.Program {
  const host = ts.createCompilerHost({});
  const read = host.getSourceFile.bind(host);
  host.getSourceFile = (name, ...rest) =>
    name === 'a.ts' ? ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true) : read(name, ...rest);
  return ts.createProgram(['a.ts'], { strict: true, target: ts.ScriptTarget.ES2022 }, host);
}
const textsOf = (text: string) =>
  messagesOf(programOf(`declare const say: (text: string) => string;\n${text}`), ['a.ts']).map(
    ({ text }) => text,
  );

describe('the check of words', () => {
  it('finds literals, both ends of a choice, and the literals of a type', () => {
    expect(textsOf("say('one'); say(Number('1') > 1 ? 'two' : `three`);")).toEqual(['one', 'two', 'three']);
    expect(textsOf("declare const verdict: 'go' | 'stop'; say(verdict);").sort()).toEqual(['go', 'stop']);
    expect(textsOf("const names = { a: 'left', b: 'right' } as const; say(names.a);")).toEqual(['left']);
  });

  it('names what could be any text', () => {
    expect(textsOf('declare const typed: string; say(typed);')).toEqual([undefined]);
  });

  it('compares the names in braces, through plurals and choices', () => {
    expect([...namesIn('{count, plural, one {# of {size}} other {#}} {x}')]).toEqual(['count', 'size', 'x']);
    expect(wrongTranslation('{n} pins', '{n} Wirbel')).toBeUndefined();
    expect(wrongTranslation('{n} pins', 'Wirbel')).toBe('leaves out {n}');
    expect(wrongTranslation('pins', '{n} Wirbel')).toContain('does not hand in');
    expect(wrongTranslation('pins', '')).toBe('has no words');
    expect(wrongTranslation('{n} pins', '{n Wirbel')).toContain('not ICU');
  });
});
