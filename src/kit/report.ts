/** What the headless report says of a kit against a game. Made entry by entry, so that any id is safe as a key. */
import type { NodeId } from '../game/model.ts';
import type { Fitting, Supply } from './fit/index.ts';
import type { ItemId } from './model.ts';

export interface SupplyReport {
  /** For each node an item for each copy, null for a copy that has none. */
  readonly assigned: Readonly<Record<NodeId, readonly (ItemId | null)[]>>;
  /** How many copies have none; only nodes that are short. */
  readonly short: Readonly<Record<NodeId, number>>;
}

/** By fastener; boxes and hasps by container, tools by tool, where the kit says anything of them. */
export interface KitReport extends SupplyReport {
  readonly teams: number;
  readonly boxes?: SupplyReport;
  readonly hasps?: SupplyReport;
  readonly tools?: SupplyReport;
}

function supplyReport({ assigned, short }: Supply): SupplyReport {
  return { assigned: Object.fromEntries(assigned), short: Object.fromEntries(short) };
}

export function kitReport(fitting: Fitting): KitReport {
  const { teams, boxes, hasps, tools } = fitting;
  return {
    teams,
    ...supplyReport(fitting),
    ...(boxes.isCounted && { boxes: supplyReport(boxes) }),
    ...(hasps.isCounted && { hasps: supplyReport(hasps) }),
    ...(tools.isCounted && { tools: supplyReport(tools) }),
  };
}
