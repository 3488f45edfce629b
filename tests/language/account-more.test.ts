import { everyNumberIsAccountedFor } from './accounted.ts';

everyNumberIsAccountedFor(1);
