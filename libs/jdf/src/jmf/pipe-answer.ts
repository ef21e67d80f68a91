import { child } from '../codec/index.js';
import { jobPhase } from '../elements/job-phase.js';
import { content } from './content.js';

/** Every pipe command is answered with the phase that the other end of the pipe is in. */
export const pipeAnswer = content({ phase: child(jobPhase) });
