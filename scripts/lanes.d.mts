export interface Lane {
  readonly name: string;
  readonly why: string;
  readonly needs: readonly string[];
  readonly wants: readonly string[];
  owns(file: string): boolean;
}
export declare const lanes: readonly Lane[];
export declare function isSpec(file: string): boolean;
