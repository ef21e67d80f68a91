import { accepts, containerOf, prefersXjdf } from './accept.js';

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

describe('what may be sent for an Accept header', () => {
  it.each([
    [true, '*/*', 'application/json'],
    [true, 'application/*', 'application/json; charset=utf-8'],
    [true, JDF, JDF],
    [false, JDF, 'application/json'],
    [false, 'text/*', 'application/json'],
    [true, `${JDF}, */*;q=0.1`, 'application/json'],
    [false, 'application/json;q=0, */*', 'application/json'],
    [false, 'application/xml', 'application/xmlx'],
  ])('%s for %s and %s', (expected, accept, mediaType) => {
    expect(accepts(accept, mediaType)).toBe(expected);
  });

  it('is a package where one is named', () => {
    expect(['multipart/related', `application/zip, ${XJDF}`, JDF].map(containerOf)).toEqual([
      'multipart',
      'zip',
      null,
    ]);
  });
});
