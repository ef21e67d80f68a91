export { checkProfile } from './check-profile.js';
