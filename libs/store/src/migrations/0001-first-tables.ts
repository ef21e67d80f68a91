import type { MigrationInterface, QueryRunner } from 'typeorm';

/** Version 0.1.0: tickets and what became of them, devices, stock, the log, access. Instants are milliseconds. */
export class FirstTables implements MigrationInterface {
  readonly name = 'FirstTables0000000000001';

  async up(runner: QueryRunner): Promise<void> {
    await runner.query(`
      CREATE TABLE document (
        id text NOT NULL CONSTRAINT document_pkey PRIMARY KEY,
        sha256 text NOT NULL,
        media_type text NOT NULL,
        name text,
        bytes bytea NOT NULL,
        received_at bigint NOT NULL
      );

      CREATE TABLE ticket (
        id text NOT NULL CONSTRAINT ticket_pkey PRIMARY KEY,
        job_id text NOT NULL,
        job_part_id text,
        name text NOT NULL,
        customer text,
        status text NOT NULL,
        status_details text,
        activation text NOT NULL,
        quantity double precision NOT NULL,
        due bigint,
        priority double precision NOT NULL,
        kind text NOT NULL,
        document_id text NOT NULL CONSTRAINT ticket_document_ref REFERENCES document,
        document_part text,
        intake text NOT NULL,
        return_url text,
        problems jsonb NOT NULL,
        created_at bigint NOT NULL,
        updated_at bigint NOT NULL,
        revision integer NOT NULL,
        plan_revision integer
      );
      CREATE INDEX ticket_newest ON ticket (created_at, id);
      CREATE INDEX ticket_status ON ticket (status, created_at, id);
      CREATE INDEX ticket_job ON ticket (job_id);

      CREATE TABLE ticket_plan (
        ticket_id text NOT NULL CONSTRAINT ticket_plan_pkey PRIMARY KEY
          CONSTRAINT ticket_plan_ticket_ref REFERENCES ticket,
        plan jsonb NOT NULL
      );

      CREATE TABLE step (
        ticket_id text NOT NULL CONSTRAINT step_ticket_ref REFERENCES ticket,
        id text NOT NULL,
        ordinal integer NOT NULL,
        types jsonb NOT NULL,
        device_id text,
        status text NOT NULL,
        status_details text,
        activation text NOT NULL,
        after jsonb NOT NULL,
        inputs jsonb NOT NULL,
        outputs jsonb NOT NULL,
        setup_s double precision NOT NULL,
        run_s double precision NOT NULL,
        wait_after_s double precision NOT NULL,
        in_amount double precision NOT NULL,
        in_unit text NOT NULL,
        out_amount double precision NOT NULL,
        unit text NOT NULL,
        planned_start bigint,
        planned_end bigint,
        start bigint,
        "end" bigint,
        good double precision NOT NULL,
        waste double precision NOT NULL,
        samples double precision NOT NULL,
        CONSTRAINT step_pkey PRIMARY KEY (ticket_id, id)
      );
      CREATE INDEX step_horizon ON step (device_id, planned_end) WHERE status NOT IN ('Completed', 'Aborted');

      CREATE TABLE resource (
        ticket_id text NOT NULL CONSTRAINT resource_ticket_ref REFERENCES ticket,
        id text NOT NULL,
        name text NOT NULL,
        status text NOT NULL,
        unit text NOT NULL,
        planned double precision NOT NULL,
        produced double precision NOT NULL,
        usable_from bigint,
        CONSTRAINT resource_pkey PRIMARY KEY (ticket_id, id)
      );

      CREATE TABLE queue_entry (
        id text NOT NULL CONSTRAINT queue_entry_pkey PRIMARY KEY,
        ticket_id text NOT NULL CONSTRAINT queue_entry_ticket_ref REFERENCES ticket,
        step_id text NOT NULL,
        device_id text NOT NULL,
        status text NOT NULL,
        delivery text NOT NULL,
        device_entry_id text,
        attempt integer NOT NULL,
        not_before bigint,
        last_error text,
        returned boolean NOT NULL,
        wanted text,
        priority double precision NOT NULL,
        submitted bigint NOT NULL,
        start bigint,
        "end" bigint
      );
      CREATE INDEX queue_entry_ticket ON queue_entry (ticket_id);
      CREATE INDEX queue_entry_device_name ON queue_entry (device_id, device_entry_id);
      CREATE INDEX queue_entry_ended ON queue_entry (device_id, "end");
      CREATE UNIQUE INDEX queue_entry_one_live ON queue_entry (ticket_id, step_id)
        WHERE status NOT IN ('Completed', 'Aborted');
      CREATE INDEX queue_entry_live ON queue_entry (device_id) WHERE status NOT IN ('Completed', 'Aborted');
      CREATE INDEX queue_entry_pending ON queue_entry (id) WHERE delivery = 'pending' AND status = 'Waiting';
      CREATE INDEX queue_entry_wanted ON queue_entry (id) WHERE wanted IS NOT NULL;

      CREATE TABLE phase (
        ticket_id text NOT NULL CONSTRAINT phase_ticket_ref REFERENCES ticket,
        step_id text NOT NULL,
        device_id text NOT NULL,
        start bigint NOT NULL,
        "end" bigint,
        status text NOT NULL,
        status_details text,
        good double precision NOT NULL,
        waste double precision NOT NULL,
        source text NOT NULL,
        CONSTRAINT phase_pkey PRIMARY KEY (ticket_id, step_id, device_id, start)
      );
      CREATE INDEX phase_device ON phase (device_id, start);

      CREATE TABLE use (
        ticket_id text NOT NULL CONSTRAINT use_ticket_ref REFERENCES ticket,
        step_id text NOT NULL,
        item text NOT NULL,
        device_id text,
        unit text NOT NULL,
        planned double precision NOT NULL,
        reserved double precision NOT NULL,
        actual double precision NOT NULL,
        waste double precision NOT NULL,
        source text NOT NULL,
        CONSTRAINT use_pkey PRIMARY KEY (ticket_id, step_id, item)
      );

      CREATE TABLE device (
        id text NOT NULL CONSTRAINT device_pkey PRIMARY KEY,
        kind text NOT NULL,
        name text NOT NULL,
        driver text NOT NULL,
        url text,
        status text NOT NULL,
        status_details text,
        job text,
        ticket_id text,
        step_id text,
        speed double precision,
        since bigint NOT NULL,
        source text NOT NULL,
        last_seen bigint,
        silent_because text
      );

      CREATE TABLE stock_item (
        item text NOT NULL CONSTRAINT stock_item_pkey PRIMARY KEY,
        name text NOT NULL,
        unit text NOT NULL
      );

      CREATE TABLE stock_balance (
        item text NOT NULL CONSTRAINT stock_balance_item_ref REFERENCES stock_item,
        lot text NOT NULL,
        account text NOT NULL,
        amount numeric NOT NULL,
        CONSTRAINT stock_balance_pkey PRIMARY KEY (item, lot, account)
      );

      CREATE TABLE stock_move (
        id text NOT NULL CONSTRAINT stock_move_pkey PRIMARY KEY,
        time bigint NOT NULL,
        item text NOT NULL CONSTRAINT stock_move_item_ref REFERENCES stock_item,
        lot text NOT NULL,
        unit text NOT NULL,
        amount numeric NOT NULL,
        "from" text NOT NULL,
        "to" text NOT NULL,
        reason text NOT NULL,
        ticket_id text,
        step_id text
      );
      CREATE INDEX stock_move_newest ON stock_move (time, id);
      CREATE INDEX stock_move_item ON stock_move (item, time, id);
      CREATE INDEX stock_move_ticket ON stock_move (ticket_id);

      CREATE TABLE receipt (
        scope text NOT NULL,
        key text NOT NULL,
        body_hash text NOT NULL,
        ticket_id text NOT NULL,
        created_at bigint NOT NULL,
        CONSTRAINT receipt_pkey PRIMARY KEY (scope, key)
      );

      CREATE TABLE event (
        id bigint GENERATED BY DEFAULT AS IDENTITY NOT NULL CONSTRAINT event_pkey PRIMARY KEY,
        position bigint,
        type text NOT NULL,
        time bigint NOT NULL,
        ticket_id text,
        step_id text,
        device_id text,
        data jsonb NOT NULL
      );
      CREATE UNIQUE INDEX event_position ON event (position) WHERE position IS NOT NULL;
      CREATE INDEX event_unplaced ON event (id) WHERE position IS NULL;
      CREATE INDEX event_ticket ON event (ticket_id, position);
      CREATE INDEX event_device ON event (device_id, position) WHERE device_id IS NOT NULL;

      CREATE TABLE cursor (
        consumer text NOT NULL CONSTRAINT cursor_pkey PRIMARY KEY,
        position bigint NOT NULL
      );

      CREATE TABLE fact (
        name text NOT NULL CONSTRAINT fact_pkey PRIMARY KEY,
        value jsonb NOT NULL
      );

      CREATE TABLE token (
        id text NOT NULL CONSTRAINT token_pkey PRIMARY KEY,
        kind text NOT NULL,
        name text NOT NULL,
        secret_hash text NOT NULL,
        created_at bigint NOT NULL,
        expires_at bigint,
        revoked_at bigint,
        last_used_at bigint
      );
      CREATE UNIQUE INDEX token_hash ON token (secret_hash);
    `);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.query(`
      DROP TABLE token, fact, cursor, event, receipt, stock_move, stock_balance, stock_item, device,
        use, phase, queue_entry, resource, step, ticket_plan, ticket, document
    `);
  }
}
