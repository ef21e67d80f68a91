import { Controller, Delete, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { hashOf, SESSION_COOKIE, tokenFault } from '../access/caller.js';
import { RUNTIME, type Runtime } from '../runtime.js';
import { parseJsonBody } from './answers.js';
import { sessionWish } from './bodies.js';
import { HttpProblem } from './problem.js';

/** Signing in at the console: a token becomes a cookie that scripts can't read and other sites can't send. */
@Controller('api/v1/session')
export class SessionController {
  constructor(@Inject(RUNTIME) private readonly runtime: Runtime) {}

  @Post()
  @HttpCode(204)
  async signIn(
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    const { token: secret } = sessionWish(parseJsonBody(request));
    const token = await this.runtime.store.tokens.byHash(hashOf(secret));
    const fault = tokenFault(token, this.runtime.clock.now());
    if (fault !== null) throw new HttpProblem('UNAUTHENTICATED', `The token does not count: ${fault}.`);
    if (token?.kind !== 'person') throw new HttpProblem('FORBIDDEN', 'Sign in with a token for a person.');
    reply.header('set-cookie', this.cookie(secret, 30 * 24 * 3600));
  }

  @Delete()
  @HttpCode(204)
  signOut(@Res({ passthrough: true }) reply: FastifyReply): void {
    reply.header('set-cookie', this.cookie('', 0));
  }

  private cookie(value: string, maxAgeS: number): string {
    const secure = this.runtime.settings.TLS_CERT === undefined ? '' : '; Secure';
    return `${SESSION_COOKIE}=${value}; Path=/; HttpOnly; SameSite=Strict; Max-Age=${maxAgeS}${secure}`;
  }
}
