/** Chance is a port: the same seed gives the same story. */
export interface Random {
  /** Uniform in [0, 1). */
  next(): number;
}

/**
 * A small seeded generator (mulberry32 by T. Ettinger, public domain; from memory). Good enough for waste and reaction
 * times of a simulated crew; never for secrets.
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return {
    next() {
      state = (state + 0x6d2b79f5) >>> 0;
      let t = state;
      t = Math.imul(t ^ (t >>> 15), t | 1);
      t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
      return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
    },
  };
}

/** A 32-bit seed from a text, so that each device of one run has its own stream (FNV-1a). */
export function seedFrom(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/** Chance of the machine, for production. */
export const systemRandom: Random = { next: () => Math.random() };
