import { CursorEntity } from './cursor.entity.js';
import { DeviceEntity } from './device.entity.js';
import { DocumentEntity } from './document.entity.js';
import { EventEntity } from './event.entity.js';
import { FactEntity } from './fact.entity.js';
import { PhaseEntity } from './phase.entity.js';
import { QueueEntryEntity } from './queue-entry.entity.js';
import { ReceiptEntity } from './receipt.entity.js';
import { ResourceEntity } from './resource.entity.js';
import { StepEntity } from './step.entity.js';
import { StockBalanceEntity } from './stock-balance.entity.js';
import { StockItemEntity } from './stock-item.entity.js';
import { StockMoveEntity } from './stock-move.entity.js';
import { TicketEntity } from './ticket.entity.js';
import { TicketPlanEntity } from './ticket-plan.entity.js';
import { TokenEntity } from './token.entity.js';
import { UseEntity } from './use.entity.js';

/** Every table, those that others refer to first. */
export const entities = [
  DocumentEntity,
  TicketEntity,
  TicketPlanEntity,
  StepEntity,
  ResourceEntity,
  QueueEntryEntity,
  PhaseEntity,
  UseEntity,
  DeviceEntity,
  StockItemEntity,
  StockBalanceEntity,
  StockMoveEntity,
  ReceiptEntity,
  EventEntity,
  CursorEntity,
  FactEntity,
  TokenEntity,
] as const;

export {
  CursorEntity,
  DeviceEntity,
  DocumentEntity,
  EventEntity,
  FactEntity,
  PhaseEntity,
  QueueEntryEntity,
  ReceiptEntity,
  ResourceEntity,
  StepEntity,
  StockBalanceEntity,
  StockItemEntity,
  StockMoveEntity,
  TicketEntity,
  TicketPlanEntity,
  TokenEntity,
  UseEntity,
};
