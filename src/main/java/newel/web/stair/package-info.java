/** The stair: a movement's variants as steps, with the state of each for a client. */
package newel.web.stair;
