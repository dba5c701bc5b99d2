package org.standoff.catalogue.load;

/**
 * A fault inside one file, before it is known which file that is.
 *
 * @param line from 1; 0 where only the pointer is known
 * @param pointer JSON pointer
 * @param found what stands there
 * @param expected what should stand there
 */
record ReadFault(int line, String pointer, String found, String expected) {}
