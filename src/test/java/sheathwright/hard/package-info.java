/**
 * Hard use: what every reader does with input that hands, programs and mischief have spoiled. A
 * short form runs with the tests; {@code src/build/hard-use.sh} runs the whole.
 */
package sheathwright.hard;
