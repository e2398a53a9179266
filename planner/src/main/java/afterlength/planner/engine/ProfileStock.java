package afterlength.planner.engine;

/** One profile for each resource: for any lengths and any number of resources. */
final class ProfileStock implements Stock {
    private final Network network;
    private final Profile[] profiles;

    ProfileStock(Network network) {
        this.network = network;
        this.profiles = new Profile[network.capacity.length];
        for (int resource = 0; resource < profiles.length; resource++) {
            profiles[resource] = new Profile(network.capacity[resource]);
        }
    }

    @Override
    public void clear() {
        for (Profile profile : profiles) {
            profile.clear();
        }
    }

    @Override
    public int earliest(int activity, int least) {
        int[] use = network.use[activity];
        int when = least;
        for (int k = 0; k < use.length; k++) {
            int from = network.useFrom[activity][k];
            int length = network.useTo[activity][k] - from;
            int found = profiles[use[k]].earliest(when + from, length, network.useAmount[activity][k]);
            if (found == Lane.NEVER) {
                return Lane.NEVER;
            }
            if (found - from > when) {
                when = found - from;
                // What was free before may not be so at the later minute.
                k = -1;
            }
        }
        return when;
    }

    @Override
    public void take(int activity, int start) {
        use(activity, start, 1);
    }

    @Override
    public void give(int activity, int start) {
        use(activity, start, -1);
    }

    private void use(int activity, int start, int sign) {
        int[] use = network.use[activity];
        for (int k = 0; k < use.length; k++) {
            profiles[use[k]].add(
                    start + network.useFrom[activity][k],
                    start + network.useTo[activity][k],
                    sign * network.useAmount[activity][k]);
        }
    }
}
