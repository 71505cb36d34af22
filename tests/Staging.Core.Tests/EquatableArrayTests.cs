using System.Collections.Immutable;

namespace Staging.Core.Tests;

public class EquatableArrayTests
{
    [Fact]
    public void Equal_elements_in_equal_order_are_equal()
    {
        EquatableArray<string> one = ["a", "b"], same = ImmutableArray.Create("a", "b"), turned = ["b", "a"], shorter = ["a"];
        Assert.True(one == same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.True(one != turned);
        Assert.False(one.Equals((object)shorter));
    }

    [Fact]
    public void A_default_one_is_empty()
    {
        EquatableArray<int> none = default, empty = [];
        Assert.Equal(empty, none);
        Assert.Equal(empty.GetHashCode(), none.GetHashCode());
        Assert.Equal(0, none.Length);
        Assert.Empty(none.Items);
        Assert.Equal("[]", none.ToString());
    }

    [Fact]
    public void It_reads_like_a_list()
    {
        EquatableArray<int> three = [1, 2, 3];
        Assert.Equal(2, three[1]);
        Assert.Equal(6, three.Sum());
        Assert.Equal("[1, 2, 3]", three.ToString());
        Assert.Equal(three, EquatableArray.CreateRange(Enumerable.Range(1, 3)));
        Assert.Throws<IndexOutOfRangeException>(() => three[3]);
    }

    [Fact]
    public void Lists_of_records_with_lists_are_equal_all_the_way_down()
    {
        EquatableArray<EquatableArray<double>> one = [[1, double.NaN], []], same = [[1, double.NaN], []];
        Assert.Equal(one, same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
    }
}
