import { pipeParams } from '../elements/pipe-params.js';
import { only } from '../jmf/content.js';
import { pipeAnswer } from '../jmf/pipe-answer.js';

/** Ends a pipe between two processes: nothing more is made or wanted. */
export const pipeClose = {
  CommandPipeClose: only(pipeParams),
  ResponsePipeClose: pipeAnswer,
  AcknowledgePipeClose: pipeAnswer,
};
