import { oncePer } from './once-per.js';

describe('oncePer', () => {
  it('computes once for each key, whatever the answer is', () => {
    const asked: object[] = [];
    const sizeOf = oncePer((key: readonly number[]) => {
      asked.push(key);
      return key.length === 0 ? undefined : key.length;
    });
    const [empty, pair] = [[], [1, 2]];
    expect([sizeOf(empty), sizeOf(pair), sizeOf(empty), sizeOf(pair)]).toEqual([undefined, 2, undefined, 2]);
    expect(asked).toEqual([empty, pair]);
  });

  it('keeps keys apart that look alike', () => {
    const made = oncePer((_key: object) => ({}));
    const [one, other] = [{}, {}];
    expect(made(one)).toBe(made(one));
    expect(made(one)).not.toBe(made(other));
  });
});
