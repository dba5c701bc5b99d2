package org.standoff.rest.http;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Room for the bodies of all requests, of those that come in and of those that are worked on. Where
 * a body that comes in finds no more, the one that has been coming in for longest gives way: who
 * stalls loses, not who has just begun.
 */
final class BodyRoom {

  private final long mostBytes;
  private final Set<Stay> comingIn = new LinkedHashSet<>();
  private long takenBytes;

  BodyRoom(long mostBytes) {
    this.mostBytes = mostBytes;
  }

  /**
   * Room for a body that begins to come in; whoever has it has to {@link Stay#leave()}.
   *
   * @param giveWay is told, at most once and by whatever thread, that its room was taken away
   */
  synchronized Stay open(Runnable giveWay) {
    Stay stay = new Stay(giveWay);
    comingIn.add(stay);
    return stay;
  }

  /** How many bodies are coming in. */
  synchronized int comingIn() {
    return comingIn.size();
  }

  /** How many bytes of bodies are kept. */
  synchronized long takenBytes() {
    return takenBytes;
  }

  private void makeRoom() {
    while (takenBytes > mostBytes && !comingIn.isEmpty()) {
      Stay longest = comingIn.iterator().next();
      longest.end();
      longest.giveWay.run();
    }
  }

  /** The room of one body. */
  final class Stay {

    private final Runnable giveWay;
    private long bytes;
    private boolean over;

    private Stay(Runnable giveWay) {
      this.giveWay = giveWay;
    }

    /** Whether there is room for more bytes of this body: there is none once it had to give way. */
    boolean take(int more) {
      synchronized (BodyRoom.this) {
        if (!over) {
          bytes += more;
          takenBytes += more;
          makeRoom();
        }
        return !over;
      }
    }

    /** Whether the body, which is whole now, still has its room; it keeps that until it leaves. */
    boolean whole() {
      synchronized (BodyRoom.this) {
        comingIn.remove(this);
        return !over;
      }
    }

    /** Gives the room back. */
    void leave() {
      synchronized (BodyRoom.this) {
        end();
      }
    }

    private void end() {
      comingIn.remove(this);
      takenBytes -= bytes;
      bytes = 0;
      over = true;
    }
  }
}
