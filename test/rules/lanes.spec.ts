import { lanes } from '../../scripts/lanes.mjs';
import { files, specs } from './tree.js';

describe('lanes', () => {
  it('runs every spec file in exactly one lane', () => {
    const astray = specs
      .map((file) => ({ file, lanes: lanes.filter((lane) => lane.owns(file)).map(({ name }) => name) }))
      .filter((entry) => entry.lanes.length !== 1);
    expect(astray).toEqual([]);
  });

  it('names tests so that a lane can find them', () => {
    const unseen = files.filter(
      (file) =>
        /(\.|-)(spec|test)\.(tsx?|mts|mjs|js)$/.test(file) &&
        !file.startsWith('test/fixtures/') &&
        !specs.includes(file),
    );
    expect(unseen).toEqual([]);
  });

  it('says of every lane what it is for', () => {
    expect(lanes.filter(({ why }) => why.length < 10)).toEqual([]);
  });
});
