import { readJson } from './read-json.js';

const read = (text: string): ReturnType<typeof readJson> => readJson(new TextEncoder().encode(text));
const place = (text: string): [number | null, string | null] | null => {
  const reading = read(text);
  return reading.ok ? null : [reading.problems[0]!.line, reading.problems[0]!.path];
};

// Grammar: RFC 8259; places: RFC 6901.
describe('JSON text', () => {
  it('is read as it is when it is sound, with or without a byte order mark', () => {
    expect(read('\ufeff{"a":[1,true,null,"\\u00e9"]}')).toMatchObject({
      ok: true,
      value: { a: [1, true, null, 'é'] },
    });
  });

  it.each([
    ['ends too early', '{"a": {"b": [1,\n2', [2, '/a/b']],
    ['has a comma too many in a list', '{"inks": [\n"Black",\n]}', [3, '/inks']],
    ['has a comma too many in an object', '{"a": 1,\n}', [2, '']],
    ['closes a list as an object', '{"a": [1, {"b": 2]}', [1, '/a/1']],
    ['lacks a comma', '[{"x": 1}\n{"y": 2}]', [2, '']],
    ['lacks a colon', '{"a"\n1}', [2, '']],
    ['has a word that is none', '{"runs": [1, 2,\n\nmany]}', [3, '/runs']],
    ['has a number with a leading zero', '{"deep": {"n": 007}}', [1, '/deep']],
    ['has a line end within a text', '{"name": "two\nlines"}', [1, '']],
    ['has a key that is no text', '{"a": {b: 1}}', [1, '/a']],
    ['goes on behind its end', '{"a": 1}\n\n{}', [3, '']],
    ['is empty', '', [1, '']],
  ] as const)(
    'that %s is refused where it breaks, in the innermost that is open',
    (_what, text, expected) => {
      expect(place(text)).toEqual(expected);
    },
  );

  it('escapes what a pointer writes otherwise', () => {
    expect(place('{"a/b~c": {"d": oops}}')).toEqual([1, '/a~1b~0c']);
  });

  it('is refused at once when it is no UTF-8', () => {
    expect(readJson(new Uint8Array([0x7b, 0xff, 0x7d]))).toMatchObject({
      ok: false,
      problems: [{ code: 'NOT_TEXT' }],
    });
  });
});
