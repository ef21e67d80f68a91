import { pipeParams } from '../elements/pipe-params.js';
import { only } from '../jmf/content.js';
import { pipeAnswer } from '../jmf/pipe-answer.js';

/** Stops the flow through a pipe until it is pulled or pushed again. */
export const pipePause = {
  CommandPipePause: only(pipeParams),
  ResponsePipePause: pipeAnswer,
  AcknowledgePipePause: pipeAnswer,
};
