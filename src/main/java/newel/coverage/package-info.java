/**
 * What the catalogue still offers under each limit and in each place: for every preset, and for every kind of limit on its
 * own at a strict value, how many variants fit that serve each muscle group, balance, mobility and pulse; and the same for
 * every posture and support. A count of none is a gap; each gap is explained in the data or is a fault, and so is an
 * explanation without a gap.
 *
 * <p>A variant serves what it trains with weight 2 or 3; mobility is served by movements of that kind and by stretches
 * (design choice). Homes are not counted here: every row has all the kit.
 */
package newel.coverage;
