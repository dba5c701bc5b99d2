package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BodyRoomTest {

  private final BodyRoom room = new BodyRoom(100);
  private final List<String> gaveWay = new ArrayList<>();

  @Test
  void whereNoRoomIsLeftTheOneThatHasBeenComingInForLongestGivesWay() {
    BodyRoom.Stay stalled = open("stalled");
    assertThat(stalled.take(60)).isTrue();
    BodyRoom.Stay quick = open("quick");

    assertThat(quick.take(41)).isTrue();

    assertThat(gaveWay).containsExactly("stalled");
    assertThat(room.takenBytes()).isEqualTo(41);
    assertThat(stalled.take(1)).as("once it gave way").isFalse();
    assertThat(stalled.whole()).isFalse();
    assertThat(room.takenBytes()).isEqualTo(41);
  }

  @Test
  void asManyGiveWayAsMakeRoom() {
    open("first").take(30);
    open("second").take(30);
    open("third").take(30);

    assertThat(open("large").take(60)).isTrue();

    assertThat(gaveWay).containsExactly("first", "second");
    assertThat(room.takenBytes()).isEqualTo(90);
    assertThat(room.comingIn()).isEqualTo(2);
  }

  @Test
  void aWholeBodyKeepsItsRoomUntilItLeaves() {
    BodyRoom.Stay whole = open("whole");
    whole.take(80);
    assertThat(whole.whole()).isTrue();

    assertThat(open("late").take(30)).isFalse();
    assertThat(gaveWay).containsExactly("late");
    assertThat(room.takenBytes()).isEqualTo(80);

    whole.leave();
    assertThat(room.takenBytes()).isZero();
    assertThat(open("later").take(30)).isTrue();
  }

  @Test
  void whoLeavesTwiceGivesBackOnce() {
    BodyRoom.Stay stay = open("stay");
    stay.take(50);
    stay.leave();
    stay.leave();
    assertThat(room.takenBytes()).isZero();
    assertThat(room.comingIn()).isZero();
    assertThat(gaveWay).isEmpty();
  }

  private BodyRoom.Stay open(String name) {
    return room.open(() -> gaveWay.add(name));
  }
}
