import { setImmediate } from 'node:timers/promises';
import { parseXmlStream } from '#libs/jdf';
import { inTurns } from './in-turns.js';

/** How many turns others have had by the time that the document is read or refused. */
async function turnsWhileReading(text: string): Promise<{ turns: number; read: boolean; pieces: number }> {
  const bytes = new TextEncoder().encode(text);
  let reading = true;
  const result = parseXmlStream(inTurns(bytes)).finally(() => {
    reading = false;
  });
  let turns = 0;
  for (; reading; turns++) await setImmediate();
  return { turns, read: (await result).ok, pieces: Math.ceil(bytes.length / 65_536) };
}

describe('a message read in turns', () => {
  it('of many megabytes lets others be served between any two pieces', async () => {
    const { turns, read, pieces } = await turnsWhileReading(
      `<r>${`<a b="${'x'.repeat(60_000)}"/>`.repeat(80)}</r>`,
    );
    expect([read, pieces > 60]).toEqual([true, true]);
    expect(turns).toBeGreaterThanOrEqual(pieces - 1);
  });

  it('is refused at once where it is hostile, and the rest is not asked for', async () => {
    let asked = 0;
    async function* counted() {
      for await (const piece of inTurns(new TextEncoder().encode('<a>'.repeat(2_000_000)))) {
        asked++;
        yield piece;
      }
    }
    expect(await parseXmlStream(counted())).toMatchObject({ problems: [{ code: 'XML_LIMIT' }] });
    expect(asked).toBeLessThan(4);
  });
});
