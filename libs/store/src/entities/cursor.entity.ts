import { Column, Entity, PrimaryColumn } from 'typeorm';
import { key, place } from './columns.js';

/** How far a consumer of the log has come. */
@Entity('cursor')
export class CursorEntity {
  @PrimaryColumn(key('cursor')) consumer!: string;
  @Column(place) position!: number;
}
