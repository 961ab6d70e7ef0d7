package sheathwright.year;

import sheathwright.year.disk.Disk;

/** Where the firm's commands are given. */
interface Desk {

  /** Runs one, as its words are typed; every path among them lies on the disk. */
  Answer run(Disk disk, String... words);
}
