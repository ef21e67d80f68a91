import { pipeParams } from '../elements/pipe-params.js';
import { only } from '../jmf/content.js';
import { pipeAnswer } from '../jmf/pipe-answer.js';

export const pipeClose = {
  CommandPipeClose: only(pipeParams),
  ResponsePipeClose: pipeAnswer,
  AcknowledgePipeClose: pipeAnswer,
};
