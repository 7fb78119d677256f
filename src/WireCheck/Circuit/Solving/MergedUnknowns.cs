namespace WireCheck.Circuit.Solving;

/// <summary>Which unknowns are eliminated along with another one, and the buckets in which twins are sought.</summary>
internal sealed class MergedUnknowns
{
    private readonly int[] _firstChild;
    private readonly int[] _sibling;
    private readonly int[] _bucketHead;
    private readonly int[] _bucketNext;
    private readonly List<int> _usedBuckets = [];

    internal MergedUnknowns(int n)
    {
        _firstChild = new int[n];
        _sibling = new int[n];
        _bucketHead = new int[n];
        _bucketNext = new int[n];
        Array.Fill(_firstChild, -1);
        Array.Fill(_bucketHead, -1);
    }

    internal void Join(int keeper, int unknown)
    {
        _sibling[unknown] = _firstChild[keeper];
        _firstChild[keeper] = unknown;
    }

    internal void ClearBuckets()
    {
        foreach (int bucket in _usedBuckets)
        {
            _bucketHead[bucket] = -1;
        }

        _usedBuckets.Clear();
    }

    /// <summary>First unknown in a bucket, -1 for none.</summary>
    internal int First(long hash) => _bucketHead[Index(hash)];

    /// <summary>The next in the same bucket, -1 for none.</summary>
    internal int Next(int unknown) => _bucketNext[unknown];

    internal void AddToBucket(long hash, int unknown)
    {
        int bucket = Index(hash);
        if (_bucketHead[bucket] < 0)
        {
            _usedBuckets.Add(bucket);
        }

        _bucketNext[unknown] = _bucketHead[bucket];
        _bucketHead[bucket] = unknown;
    }

    /// <summary>The full order: each pivot, then all that was joined to it.</summary>
    internal int[] Expand(List<int> pivots)
    {
        int[] order = new int[_firstChild.Length];
        int count = 0;
        Stack<int> open = new();
        foreach (int pivot in pivots)
        {
            open.Push(pivot);
            while (open.TryPop(out int unknown))
            {
                order[count++] = unknown;
                for (int child = _firstChild[unknown]; child >= 0; child = _sibling[child])
                {
                    open.Push(child);
                }
            }
        }

        return order;
    }

    private int Index(long hash) => (int)(hash % _bucketHead.Length);
}
