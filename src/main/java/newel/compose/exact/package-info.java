/**
 * Chooses one candidate for each slot of a sequence, best of all, and proves it. Knows nothing of movements or people.
 *
 * <p><b>The problem.</b> Slots 1…S in order; in slot s one candidate c of its pool. Maximise the sum of points less the
 * penalties between neighbouring states, so that each family occurs once at most, each demand d is served by at least
 * {@code need(d)} chosen candidates, all seconds together (with those between neighbours) lie in a window, and runs of
 * standing and of raised arms keep their limits. This is a resource-constrained longest path in a layered graph.
 *
 * <p><b>The bound</b> is a Lagrangian relaxation. With multipliers λ(d) ≥ 0, μ(f) ≥ 0 and τ of either sign, demands,
 * families and the window move into the objective, and what remains is a longest path over (slot, state):
 *
 * <pre>
 * w(s,c)  = points(s,c) + Σ λ(d served by c) − μ(family of c) + τ·seconds(c)
 * H(s,p)  = max over q of [ max over c in q of w(s+1,c) + H(s+1,q) − penalty(p,q) + τ·seconds(p,q) ]
 * L       = H(0) + Σ μ − Σ λ·need − τ·(τ &gt; 0 ? least seconds : most seconds)
 * </pre>
 *
 * L is never below the best score, whatever the multipliers (weak duality), so they may be rounded to whole numbers and no
 * proof rests on floating point. They are tuned by a subgradient method with deflected directions.
 *
 * <p><b>Fixing.</b> A candidate whose best path through it stays below a known solution can be in no better one and is
 * dropped. <b>Label setting.</b> Slot after slot, every partial sequence is a label; of two labels that leave the same to
 * choose from (state, seconds, runs, needs left, families that still occur) the lesser goes (exact dominance), and so does
 * a label whose value with H and what is left of the constants stays below the best solution. A layer that grows too wide
 * is cut to its most promising labels; the largest bound cut off stays on record. Nothing cut: proved. Otherwise the answer
 * says how much better a solution could be at most.
 *
 * <p><b>Ties.</b> Every (slot, candidate id) has a tie weight; all of one solution's together stay below one point. They
 * depend on ids alone, so neither the order of candidates nor that of the search decides what comes out.
 *
 * <p><b>Budget.</b> Effort is counted in labels and table cells and never in time, so that the same problem has the same
 * answer on any machine.
 *
 * <p>Numbers: points are whole; seconds are multiples of {@link newel.compose.exact.Problem#GRID}.
 */
package newel.compose.exact;
