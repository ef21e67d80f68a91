import { Controller, Get, Inject, Post, Query, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { moveStock, type StockMove } from '#libs/flow';
import { isoTime } from '#libs/kernel';
import { RUNTIME, type Runtime } from '../runtime.js';
import { cursorPage, limitOf, okOr, parseJsonBody } from './answers.js';
import { stockMove } from './bodies.js';

/** Stock with its lots and moves (/api/v1/stock). */
@Controller('api/v1/stock')
export class StockController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Get()
  async list(): Promise<unknown> {
    const items = (await this.runtime.store.stock()).map(({ item, name, unit, accounts, lots }) => ({
      item,
      name,
      unit,
      onHand: (accounts.store ?? 0) + (accounts.reserved ?? 0),
      reserved: accounts.reserved ?? 0,
      accounts,
      lots,
    }));
    return { items, next: null };
  }

  @Get('moves')
  async moves(
    @Query('cursor') cursor?: string,
    @Query('limit') limit?: string,
    @Query('item') item?: string,
    @Query('ticket') ticket?: string,
  ): Promise<unknown> {
    return cursorPage(
      await this.runtime.store.moves({ cursor, limit: limitOf(limit), item, ticketId: ticket }),
      moveView,
    );
  }

  @Post('moves')
  async move(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<unknown> {
    const wish = stockMove(parseJsonBody(request));
    const moved = okOr(await moveStock(this.runtime.ports, wish, request.caller?.name ?? 'someone'));
    reply.status(201);
    return moveView(moved);
  }
}

function moveView(move: StockMove): Record<string, unknown> {
  const { id, item, lot, unit, amount, from, to, reason, ticketId, stepId } = move;
  return {
    id,
    time: isoTime(move.time),
    item,
    lot,
    unit,
    amount,
    from,
    to,
    reason,
    ticket: ticketId,
    step: stepId,
  };
}
