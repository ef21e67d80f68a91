import { Column, Entity, PrimaryColumn } from 'typeorm';
import { json, key } from './columns.js';

@Entity('fact')
export class FactEntity {
  @PrimaryColumn(key('fact')) name!: string;
  @Column(json) value!: unknown;
}
