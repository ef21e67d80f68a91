import { pipeParams } from '../elements/pipe-params.js';
import { only } from '../jmf/content.js';
import { pipeAnswer } from '../jmf/pipe-answer.js';

export const pipePause = {
  CommandPipePause: only(pipeParams),
  ResponsePipePause: pipeAnswer,
  AcknowledgePipePause: pipeAnswer,
};
