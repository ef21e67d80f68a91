import { prefersXjdf } from './accept.js';

const JDF = 'application/vnd.cip4-jdf+xml';
const XJDF = 'application/vnd.cip4-xjdf+xml';

describe('which generation of a ticket is wanted', () => {
  it.each([
    [false, '*/*'],
    [false, JDF],
    [true, XJDF],
    [true, `${JDF};q=0, ${XJDF}`],
    [true, `${XJDF}, ${JDF};q=0.1`],
    [false, `${XJDF};q=0.5, ${JDF}`],
    [false, `${JDF}, ${XJDF}`],
    [true, `${XJDF}, application/zip`],
    [false, `${XJDF};q=0`],
  ])('%s for %s', (expected, accept) => {
    expect(prefersXjdf(accept)).toBe(expected);
  });
});
