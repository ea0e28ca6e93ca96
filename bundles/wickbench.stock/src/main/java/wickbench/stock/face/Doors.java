package wickbench.stock.face;

import wickbench.stock.Papers;
import wickbench.stock.Stockkeeping;
import wickbench.stock.Stockroom;

/** The services that the commands call. */
record Doors(Stockroom room, Stockkeeping keeping, Papers papers) {}
