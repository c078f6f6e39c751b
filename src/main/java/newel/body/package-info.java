/**
 * The body: a skeleton of straight segments, posed by clinical joint angles and solved against what it touches.
 *
 * <p>Frame (after Wu and Cavanagh 1995): X forward, Y up, Z to the person's right, right-handed. Lengths are fractions of
 * stature, forces body weights, moments body weight times stature. Angles in records are degrees.
 *
 * <p>Signs: flexion, abduction, outward rotation, supination, dorsiflexion and wrist extension positive on both sides;
 * spine flexion forward, bend and turn to the right positive. This is the reverse of ISB for rotation and supination.
 *
 * <p>Rotations compose from the pelvis outward: pelvis Ry(−turn) Rx(list) Rz(−tilt); each part of the spine Rz(−flex)
 * Rx(side) Ry(−turn); thigh Rz(flex) Rx(∓abd) Ry(∓out); shank Rz(−knee); foot Rz(ankle) Ry(∓turn) Rx(±tip); upper arm
 * Ry(−a) Rz(raise) Ry(a) Ry(∓turn) with a = ±(90 − plane); forearm Rz(elbow). Upper sign on the right.
 *
 * <p>Limits of the model: rigid average proportions, static loads only, hands carry the share they are given, friction,
 * speed and muscle co-contraction are left out.
 */
package newel.body;
