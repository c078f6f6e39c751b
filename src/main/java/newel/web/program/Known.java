package newel.web.program;

import newel.client.Client;
import newel.compose.Suiting;
import newel.program.Program;
import newel.screen.Screening;

/** All that is known of a client when a page about their program is asked for. */
record Known(Client client, Screening screening, Suiting suiting, Program program) {}
