export {
  type OpenInterval,
  type Placement,
  type PlantState,
  placeForward,
  type Task,
} from './place-forward.js';
