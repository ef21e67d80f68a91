import { Column, Entity, Index, PrimaryColumn } from 'typeorm';
import type { Token, TokenKind } from '#libs/flow';
import type { Instant } from '#libs/kernel';
import { instant, key, maybe, text } from './columns.js';

/** Who may come in. Only the hash of a secret is kept. */
@Entity('token')
@Index('token_hash', ['secretHash'], { unique: true })
export class TokenEntity implements Token {
  @PrimaryColumn(key('token')) id!: string;
  @Column(text) kind!: TokenKind;
  @Column(text) name!: string;
  @Column(text) secretHash!: string;
  @Column(instant) createdAt!: Instant;
  @Column(maybe(instant)) expiresAt!: Instant | null;
  @Column(maybe(instant)) revokedAt!: Instant | null;
  @Column(maybe(instant)) lastUsedAt!: Instant | null;
}
