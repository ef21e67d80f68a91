import { eventTypes } from '#libs/flow';
import { eventNames } from '../../apps/console/src/server/event-names.js';

describe('names of events', () => {
  it('that the console listens for are all that the server sends', () => {
    expect([...eventNames].sort()).toEqual(Object.keys(eventTypes).sort());
  });
});
