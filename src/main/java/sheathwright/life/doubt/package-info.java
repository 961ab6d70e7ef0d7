/** What is allowed in a job and no firm means: asked about, never refused. */
package sheathwright.life.doubt;
