import { alternate, perSecond } from './alternate.mjs';

// Both sides are the same loop, so the ratio says how far apart two equal things lie on this machine now:
// read the other ratios with that in mind.
export const name = 'calibration';
export const unit = 'million steps/s';
export const better = 'higher';
export const target = 0.9;
export const note = 'the same loop on both sides; its distance from 1 is the noise of this run';

const STEPS = 20_000_000;

function loop() {
  let state = 1;
  for (let step = 0; step < STEPS; step++) state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
  // Handed out, so that the engine cannot leave the loop away.
  return state;
}

export const run = () => {
  const side = perSecond(STEPS / 1e6, loop);
  return alternate({ ours: side, peer: side, rounds: 7 });
};
