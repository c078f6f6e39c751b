/** Logging a limitation: by a preset, or by joint, motion, side and degrees. */
package newel.web.limitation;
