import type { Token } from '#libs/flow';
import { NOON } from './store-rows.js';
import { freshStore, type MakeStore } from './store-suite.js';

const token: Token = {
  id: 't1',
  kind: 'person',
  name: 'Shift leader',
  createdAt: NOON,
  expiresAt: NOON + 1000,
  revokedAt: null,
  lastUsedAt: null,
};

export function exerciseTokens(make: MakeStore): void {
  describe('tokens', () => {
    const current = freshStore(make);

    it('are found by the hash of their secret, which is shown to nobody', async () => {
      const { tokens } = current().store;
      await tokens.add(token, 'hash-1');
      expect(await tokens.byHash('hash-1')).toEqual(token);
      expect(await tokens.byHash('hash-2')).toBeNull();
      expect(JSON.stringify(await tokens.list())).not.toContain('hash-1');
    });

    it('are revoked once, found still, and remember their last use', async () => {
      const { tokens } = current().store;
      await tokens.add(token, 'hash-1');
      await tokens.touch('t1', NOON + 5);
      expect(await tokens.revoke('t1', NOON + 7)).toBe(true);
      expect(await tokens.revoke('t1', NOON + 9)).toBe(false);
      expect(await tokens.revoke('t2', NOON + 9)).toBe(false);
      const found = await tokens.byHash('hash-1');
      expect(found).toEqual({ ...token, lastUsedAt: NOON + 5, revokedAt: NOON + 7 });
    });

    it('never share a hash', async () => {
      const { tokens } = current().store;
      await tokens.add(token, 'hash-1');
      await expect(tokens.add({ ...token, id: 't2' }, 'hash-1')).rejects.toMatchObject({ name: 'Fault' });
    });
  });
}
