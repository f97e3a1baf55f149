package strickle.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class CourseTest {

  private static Course course(double[]... moments) {
    Course course = new Course();
    for (double[] one : moments) {
      course.add(new Course.Moment(one[0], BigDecimal.valueOf(one[1]), (long) one[2]));
    }
    return course;
  }

  @Test
  void theFirstPlanIsTheFirstTold() {
    assertEquals(0.5, course(new double[] {0.5, 9, 800}, new double[] {2, 3, 700}).firstSeconds());
  }

  @Test
  void nearIsWithinOnePercentOfBothFigures() {
    double[] last = {9, 100, 1000};
    assertEquals(4, course(new double[] {4, 101, 1010}, last).nearSeconds());
    assertEquals(9, course(new double[] {4, 101.5, 1000}, last).nearSeconds());
    assertEquals(9, course(new double[] {4, 100, 1011}, last).nearSeconds());
  }

  @Test
  void whoWillBeOnTimeIsNearOnlyOnTime() {
    double[] last = {9, 0, 1000};
    assertEquals(9, course(new double[] {4, 0.5, 1000}, last).nearSeconds());
    assertEquals(4, course(new double[] {4, 0, 1000}, last).nearSeconds());
  }

  @Test
  void nearCountsFromWhereItStaysNear() {
    double[] near = {1, 0, 1005};
    double[] away = {2, 0, 2000};
    double[] again = {3, 0, 1003};
    assertEquals(3, course(near, away, again, new double[] {4, 0, 1000}).nearSeconds());
  }

  @Test
  void theOnlyPlanIsNearItself() {
    assertEquals(1, course(new double[] {1, 5, 10}).nearSeconds());
  }
}
